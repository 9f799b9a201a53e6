package hingewise.diagnosis;

/** Names of the network's variables: ids of different sections may be alike, and causes have a past. */
final class Names {
    private Names() {}

    static String history(String id) {
        return "history." + id;
    }

    /** A cause as it is now. */
    static String cause(String id) {
        return "cause." + id;
    }

    /** A cause in one version of many; the last is the one that is now. */
    static String cause(String id, int version, int last) {
        return version == last ? cause(id) : cause(id) + ".v" + version;
    }

    /** An observation as it would be made now. */
    static String observation(String id) {
        return "seen." + id;
    }

    /** An observation as it was made once. */
    static String past(String observation, int which) {
        return observation(observation) + ".v" + which;
    }

    /** Whether an observation shows for another reason than the causes that were touched. */
    static String otherwise(String observation) {
        return "otherwise." + observation;
    }

    /** Whether a version of a cause shows an observation. */
    static String shows(String cause, String observation, int version) {
        return showsAnyVersion(cause, observation) + version;
    }

    /** What the names of all those versions begin with. */
    static String showsAnyVersion(String cause, String observation) {
        return "shows." + cause + "." + observation + ".v";
    }

    /** The id within its section. */
    static String id(String name) {
        return name.substring(name.indexOf('.') + 1);
    }
}

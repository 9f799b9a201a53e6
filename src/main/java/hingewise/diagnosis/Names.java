package hingewise.diagnosis;

/** Names of the network's variables: ids of different sections may be alike. */
final class Names {
    private Names() {}

    static String history(String id) {
        return "history." + id;
    }

    static String cause(String id) {
        return "cause." + id;
    }

    static String observation(String id) {
        return "seen." + id;
    }

    /** The id within its section. */
    static String id(String name) {
        return name.substring(name.indexOf('.') + 1);
    }
}

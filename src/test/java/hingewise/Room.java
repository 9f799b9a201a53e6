package hingewise;

import com.tngtech.archunit.core.domain.JavaClass;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Set;

/** The rooms of the house, from the ground up, and which others each may use. */
enum Room {
    PLAIN("plain"),
    INFERENCE("inference", PLAIN),
    DECISION("decision"),
    RULEBOOK("rulebook", PLAIN),
    RULEBOOK_YAML("rulebook.yaml", PLAIN, RULEBOOK),
    CASEFILE("casefile", PLAIN, RULEBOOK),
    CASEFILE_STORE("casefile.store", PLAIN, RULEBOOK, CASEFILE),
    DIAGNOSIS("diagnosis", PLAIN, INFERENCE, RULEBOOK, CASEFILE),
    COSTING("costing", PLAIN, INFERENCE, RULEBOOK, CASEFILE, DIAGNOSIS),
    COSTING_CSV("costing.csv", PLAIN, RULEBOOK, COSTING),
    COSTING_YAML("costing.yaml", PLAIN, RULEBOOK, RULEBOOK_YAML, COSTING),
    PLANNING("planning", PLAIN, DECISION, INFERENCE, RULEBOOK, CASEFILE, DIAGNOSIS, COSTING),
    OFFER("offer", PLAIN, DECISION, INFERENCE, RULEBOOK, CASEFILE, DIAGNOSIS, COSTING, PLANNING),
    ASSESSMENT("assessment", PLAIN, INFERENCE, RULEBOOK, CASEFILE, DIAGNOSIS, COSTING, PLANNING, OFFER),
    REVIEW("review", PLAIN, INFERENCE, RULEBOOK, CASEFILE, DIAGNOSIS, COSTING, PLANNING, OFFER, ASSESSMENT),
    SIMULATION("simulation", PLAIN, INFERENCE, RULEBOOK, CASEFILE, DIAGNOSIS, COSTING, PLANNING, REVIEW),
    INTAKE("intake", PLAIN, INFERENCE, RULEBOOK, CASEFILE, DIAGNOSIS, COSTING, PLANNING, OFFER, ASSESSMENT),
    INTAKE_CSV("intake.csv", PLAIN),
    INTAKE_SHEET(
            "intake.sheet",
            PLAIN,
            INFERENCE,
            RULEBOOK,
            CASEFILE,
            DIAGNOSIS,
            COSTING,
            PLANNING,
            OFFER,
            ASSESSMENT,
            INTAKE,
            INTAKE_CSV),
    INTAKE_STORE("intake.store", PLAIN, RULEBOOK, RULEBOOK_YAML, INTAKE),
    LEARNING("learning", PLAIN, INFERENCE, RULEBOOK, CASEFILE, DIAGNOSIS),
    REPORT("report", PLAIN, RULEBOOK, CASEFILE, DIAGNOSIS, COSTING, PLANNING, OFFER, ASSESSMENT),
    TERMINAL(
            "terminal",
            PLAIN,
            INFERENCE,
            RULEBOOK,
            RULEBOOK_YAML,
            CASEFILE,
            CASEFILE_STORE,
            DIAGNOSIS,
            COSTING,
            COSTING_CSV,
            COSTING_YAML,
            PLANNING,
            OFFER,
            ASSESSMENT,
            REVIEW,
            SIMULATION,
            INTAKE,
            INTAKE_CSV,
            INTAKE_SHEET,
            INTAKE_STORE,
            LEARNING,
            REPORT),
    WIZARD(
            "wizard",
            PLAIN,
            RULEBOOK,
            RULEBOOK_YAML,
            CASEFILE,
            CASEFILE_STORE,
            DIAGNOSIS,
            COSTING,
            COSTING_CSV,
            COSTING_YAML,
            PLANNING,
            OFFER,
            ASSESSMENT,
            INTAKE,
            LEARNING,
            REPORT),
    /** The way in, which chooses between terminal and window. */
    DOOR("", TERMINAL, WIZARD);

    private final String name;
    private final Set<Room> mayUse;

    Room(String name, Room... mayUse) {
        this.name = name;
        this.mayUse = Set.of(mayUse);
    }

    Set<Room> mayUse() {
        return mayUse;
    }

    /**
     * The room a class lives in; of a room and a room within it, the inner one.
     *
     * @throws AssertionError if it lives in none
     */
    static Room of(JavaClass type) {
        String place = type.getBaseComponentType().getPackageName();
        if (place.equals("hingewise")) {
            return DOOR;
        }
        return Arrays.stream(values())
                .filter(room -> room != DOOR && (place + ".").startsWith("hingewise." + room.name + "."))
                .max(Comparator.comparingInt(room -> room.name.length()))
                .orElseThrow(() -> new AssertionError(type.getName() + " lives in no room of the house"));
    }

    @Override
    public String toString() {
        return this == DOOR ? "hingewise" : name;
    }
}

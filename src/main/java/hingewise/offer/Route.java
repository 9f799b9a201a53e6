package hingewise.offer;

/** What can be done with a phone. */
public enum Route {
    REPAIR("repair-here", "repair here"),
    SERVICE("makers-service", "maker's service"),
    RETURN("return", "return to the seller"),
    AS_IS("sell-as-is", "sell as it is, faults stated"),
    BREAK("break-for-parts", "break for parts"),
    NOTHING("do-not-buy", "do not buy");

    private final String id;
    private final String label;

    Route(String id, String label) {
        this.id = id;
        this.label = label;
    }

    public String id() {
        return id;
    }

    /** A few words. */
    public String label() {
        return label;
    }
}

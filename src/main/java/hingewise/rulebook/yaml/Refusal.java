package hingewise.rulebook.yaml;

/** Nothing of a file or folder can be read, for the reason given. */
public final class Refusal extends Exception {
    private static final long serialVersionUID = 1;

    private final transient Place place;
    private final String what;
    private final String advice;

    public Refusal(Place place, String what, String advice) {
        super(what);
        this.place = place;
        this.what = what;
        this.advice = advice;
    }

    public void tell(Problems problems) {
        problems.add(place, what, advice);
    }
}

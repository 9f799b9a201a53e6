package hingewise.report.handbook;

/**
 * An entry of the rule book and where its article stands.
 *
 * @param label what it is called
 */
public record Ref(Chapter chapter, String id, String label) {
    /** The address of the article from any page of the handbook. */
    public String href() {
        return chapter.file() + "#" + id;
    }
}

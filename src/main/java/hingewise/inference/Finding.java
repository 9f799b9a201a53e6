package hingewise.inference;

/** What is known about one variable. */
public sealed interface Finding permits Hard, Weighted {
    /** P(what was found | the variable is yes), up to a factor shared with {@link #ifNo()}. */
    double ifYes();

    /** P(what was found | the variable is no), up to a factor shared with {@link #ifYes()}. */
    double ifNo();
}

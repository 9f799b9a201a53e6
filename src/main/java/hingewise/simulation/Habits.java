package hingewise.simulation;

import hingewise.planning.Decision;
import hingewise.planning.Reckoning;
import hingewise.rulebook.Cause;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.Moment;
import hingewise.rulebook.Part;
import hingewise.rulebook.Sign;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Plain habits of a bench. They know the chances as exactly as the planner does, after every result. What they lack is
 * looking ahead.
 *
 * @param thrifty whether nothing is fitted where giving up is expected to cost less; else parts are fitted until it works
 */
record Habits(boolean thrifty) {
    static final int MOST_REPAIRS = 4;

    private static final int MOST_CHECKS = 6;
    private static final int MOST_TRIES = 12;
    /** A cause less likely than this is not gone after. */
    private static final double UNLIKELY = .05;
    /** One that is likelier than this needs no more checks. */
    private static final double SURE = .8;

    /** The part that most likely renews something faulty, then the next, until it works. */
    Outcome likeliestPart(Work work) {
        return parts(work, new HashSet<>());
    }

    /** The likeliest cause: what cures it for least is tried, and where there is nothing more to try its part is fitted. */
    Outcome likeliestCause(Work work) {
        Set<String> exhausted = new HashSet<>();
        int repairs = 0;
        for (int i = 0; i < MOST_TRIES && !work.works(); i++) {
            Optional<Cause> likeliest = counted(work)
                    .filter(c -> !exhausted.contains(c.id()) && work.chance(c.id()) >= UNLIKELY)
                    .max(Comparator.comparingDouble((Cause c) -> work.chance(c.id()))
                            .thenComparing(Cause::id));
            if (likeliest.isEmpty()) {
                break;
            }
            Cause cause = likeliest.get();
            Optional<Confirmation> cure = possible(work)
                    .filter(c -> c.cures().containsKey(cause.id()))
                    .min(cheapest(work));
            Set<Part> parts = work.setting().believed().parts(cause.component());
            if (cure.isPresent()) {
                work.does(cure.get());
            } else {
                exhausted.add(cause.id());
                if (!parts.isEmpty() && repairs < MOST_REPAIRS && isWorthIt(work, parts)) {
                    work.fits(parts);
                    repairs++;
                }
            }
        }
        return givesUp(work);
    }

    /** The cheapest check that may tell anything, then the next, until a cause is rather sure; then its part. */
    Outcome cheapestCheck(Work work) {
        for (int i = 0; i < MOST_CHECKS && !work.works(); i++) {
            Optional<Confirmation> check =
                    possible(work).filter(c -> tells(work, c)).min(cheapest(work));
            if (check.isEmpty() || counted(work).anyMatch(c -> work.chance(c.id()) >= SURE)) {
                break;
            }
            work.does(check.get());
        }
        return parts(work, new HashSet<>());
    }

    /**
     * The dearest of all parts that are fitted for one cause, if it renews anything that counts: in the rule book that
     * comes with the program, the inner display. Then as by the likeliest part.
     */
    Outcome dearestPart(Work work) {
        Reckoning believed = work.setting().believed();
        Set<Part> dearest = work
                .setting()
                .rules()
                .causesOf(work.setting().costs().family())
                .stream()
                .map(c -> believed.parts(c.component()))
                .max(Comparator.comparingDouble(believed::goods))
                .orElse(Set.of());
        Set<String> renewed = Reckoning.renewed(dearest);
        Set<Set<Part>> done = new HashSet<>();
        if (counted(work).anyMatch(c -> renewed.contains(c.component()))) {
            work.fits(dearest);
            done.add(dearest);
        }
        return parts(work, done);
    }

    private Outcome parts(Work work, Set<Set<Part>> done) {
        while (!work.works() && done.size() < MOST_REPAIRS) {
            Optional<Set<Part>> next = likeliest(work, done);
            if (next.isEmpty() || !isWorthIt(work, next.get())) {
                break;
            }
            work.fits(next.get());
            done.add(next.get());
        }
        return givesUp(work);
    }

    private static Optional<Set<Part>> likeliest(Work work, Set<Set<Part>> done) {
        Reckoning believed = work.setting().believed();
        record Ranked(Set<Part> parts, double chance) {}
        return counted(work)
                .map(c -> believed.parts(c.component()))
                .filter(p -> !p.isEmpty() && !done.contains(p))
                .distinct()
                .map(p -> new Ranked(p, chance(work, p)))
                .filter(r -> r.chance() >= UNLIKELY)
                .max(Comparator.comparingDouble(Ranked::chance)
                        .thenComparing(Comparator.comparingDouble((Ranked r) -> believed.fitting(r.parts()))
                                .reversed()))
                .map(Ranked::parts);
    }

    /** As if causes were independent: it only says which part comes first. */
    private static double chance(Work work, Set<Part> parts) {
        return 1
                - mended(work, parts).stream()
                        .mapToDouble(c -> 1 - work.chance(c))
                        .reduce(1, (a, b) -> a * b);
    }

    private static Set<String> mended(Work work, Set<Part> parts) {
        Set<String> renewed = Reckoning.renewed(parts);
        return counted(work)
                .filter(c -> renewed.contains(c.component()))
                .map(Cause::id)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** Whether fitting these and then ending is expected to cost less than ending now. */
    private boolean isWorthIt(Work work, Set<Part> parts) {
        if (!thrifty) {
            return true;
        }
        boolean opens = work.opened() || parts.stream().anyMatch(p -> p.access().isPresent());
        double after = work.toFit(parts) + least(work, opens, mended(work, parts));
        return after < least(work, work.opened(), Set.of());
    }

    private static double least(Work work, boolean opened, Set<String> gone) {
        return work.setting().believed().endings(opened).stream()
                .mapToDouble(k -> work.expected(k, opened, gone))
                .min()
                .orElse(0);
    }

    /** What works is sold as working; else it ends in the way that is expected to cost least. */
    static Outcome givesUp(Work work) {
        if (work.works()) {
            return work.ends(Decision.Kind.LEAVE);
        }
        boolean opened = work.opened();
        return work.ends(work.setting().believed().endings(opened).stream()
                .min(Comparator.comparingDouble(k -> work.expected(k, opened, Set.of())))
                .orElse(Decision.Kind.LEAVE));
    }

    private static Stream<Cause> counted(Work work) {
        return work.setting().believed().counted().stream();
    }

    private static Stream<Confirmation> possible(Work work) {
        Map<String, Boolean> latest = work.readings().latest();
        Set<String> tried = work.readings().tried();
        return work.setting().rules().confirmations().values().stream()
                .filter(c -> c.families().contains(work.setting().costs().family()))
                .filter(c -> c.moments().contains(Moment.ARRIVAL) || c.moments().contains(Moment.OPENED))
                .filter(c -> !tried.contains(c.id()))
                .filter(c -> work.setting()
                        .rules()
                        .possible(c, latest, work.readings().open()));
    }

    private static boolean tells(Work work, Confirmation c) {
        Map<String, Boolean> latest = work.readings().latest();
        return counted(work)
                .anyMatch(x -> c.cures().containsKey(x.id())
                        || x.signs().stream()
                                .map(Sign::observation)
                                .anyMatch(o -> c.settles().contains(o) && !latest.containsKey(o)));
    }

    private static Comparator<Confirmation> cheapest(Work work) {
        return Comparator.comparingDouble(
                        (Confirmation c) -> work.setting().believed().doing(c) + work.toOpen(c.access()))
                .thenComparing(Confirmation::id);
    }
}

package hingewise.decision;

import java.util.SplittableRandom;

/** Follows the planner from place to place, asking it anew after every report, and reckons exactly what that costs. */
final class Followed {
    private Followed() {}

    /** The expected cost of doing as the planner says. */
    static double cost(Small small, long seed) {
        return cost(small, small.start(), new SplittableRandom(seed));
    }

    private static double cost(Small small, Small.Place place, SplittableRandom random) {
        Worlds worlds = small.worlds(place, Planner.WORLDS, random);
        Prospect prospect =
                Planner.prospect(without(small.problem(), place.done()), worlds, place.open(), random.nextLong());
        if (!prospect.goesOn()) {
            return small.loss(place, small.problem().endings().get(prospect.ending()));
        }
        int act = nth(place.done(), prospect.options().get(0).act());
        return small.ways(place, act).stream()
                .mapToDouble(w -> w.chance() * (w.cost() + cost(small, w.place(), random)))
                .sum();
    }

    private static Problem without(Problem p, long done) {
        return new Problem(
                p.counted(),
                p.failure(),
                p.leftover(),
                p.signs(),
                p.gates(),
                java.util.stream.IntStream.range(0, p.acts().size())
                        .filter(a -> (done >>> a & 1) == 0)
                        .mapToObj(p.acts()::get)
                        .toList(),
                p.endings());
    }

    private static int nth(long done, int n) {
        int left = n;
        for (int a = 0; ; a++) {
            if ((done >>> a & 1) == 0 && left-- == 0) {
                return a;
            }
        }
    }
}

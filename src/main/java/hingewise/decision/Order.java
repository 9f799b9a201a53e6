package hingewise.decision;

import java.util.Comparator;
import java.util.List;

/** Simple ways to choose what to do next among acts that save anything. */
enum Order {
    /**
     * Most saved for what it costs. With one fault and independent tries this is the order of p / C; an opening shared by
     * several acts is judged with those behind it that make it most worth its cost, best first (Ottosen and Jensen 2010,
     * UAI).
     */
    FOR_ITS_COST {
        @Override
        int first(Problem problem, List<Saving> savings) {
            double best = 0;
            int first = NOTHING;
            for (Saving s : savings) {
                double efficiency = Saving.efficiency(s.gross(), s.cost());
                if (s.any() && Saving.more(efficiency, best)) {
                    best = efficiency;
                    first = s.act();
                }
            }
            long shared = 0;
            for (Saving s : savings) {
                shared |= s.opens();
            }
            for (long rest = shared; rest != 0; rest &= rest - 1) {
                Block block = Block.behind(problem, savings, Long.lowestOneBit(rest));
                if (Saving.more(block.efficiency(), best)) {
                    best = block.efficiency();
                    first = block.first();
                }
            }
            return first;
        }
    },
    /** Most saved when its cost is taken off. */
    NET {
        @Override
        int first(Problem problem, List<Saving> savings) {
            double best = Double.NEGATIVE_INFINITY;
            int first = NOTHING;
            for (Saving s : savings) {
                if (s.any() && Saving.more(s.net(), best)) {
                    best = s.net();
                    first = s.act();
                }
            }
            return first;
        }
    };

    static final int NOTHING = -1;

    /** The act to do next, or {@link #NOTHING}; the first listed of equals. */
    abstract int first(Problem problem, List<Saving> savings);

    /** The acts behind a gate that together are most worth opening it. */
    private record Block(double efficiency, int first) {
        static Block behind(Problem problem, List<Saving> savings, long gate) {
            List<Saving> behind = savings.stream()
                    .filter(s -> (s.opens() & gate) != 0 && s.any())
                    .sorted(Comparator.comparingDouble(s -> Saving.coarse(-Saving.efficiency(s.gross(), s.own()))))
                    .toList();
            double best = 0;
            double gross = 0;
            double own = 0;
            double opening = 0;
            long opens = 0;
            for (Saving s : behind) {
                gross += s.gross();
                own += s.own();
                opening +=
                        s.opening() * problem.opening(s.opens() & ~opens) / Math.max(problem.opening(s.opens()), 1e-12);
                opens |= s.opens();
                best = Math.max(best, Saving.efficiency(gross, own + opening));
            }
            return new Block(best, behind.isEmpty() ? NOTHING : behind.get(0).act());
        }
    }
}

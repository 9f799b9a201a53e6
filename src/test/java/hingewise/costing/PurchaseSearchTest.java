package hingewise.costing;

import static org.assertj.core.api.Assertions.assertThat;

import hingewise.costing.PurchaseProblem.Bid;
import hingewise.costing.PurchaseProblem.Item;
import hingewise.costing.PurchaseProblem.Terms;
import hingewise.oracle.IntegerProgram;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PurchaseSearchTest {
    private static final int LONG = 365;
    private static final double MISSING = 100_000;

    /** Least costs recomputed by ojAlgo, an integer-programming library. */
    @Test
    void anIntegerProgramFindsNothingCheaperInFiveHundredPriceBooks() {
        int withMinimum = 0;
        int withoutOffer = 0;
        for (long seed = 1; seed <= 500; seed++) {
            Random random = new Random(seed);
            PurchaseProblem problem = invented(random);
            int limit = random.nextInt(3) == 0 ? 6 : LONG;
            var found = PurchaseSearch.cheapest(problem, limit);
            assertThat(found).as("seed %d", seed).isPresent();
            long missing = found.get().items().stream()
                    .filter(i -> problem.items().get(i).missing())
                    .count();
            assertThat(found.get().cost() + missing * MISSING)
                    .as("seed %d", seed)
                    .isEqualTo(Math.round(program(problem, limit).least()));
            assertThat(recomputed(problem, found.get()))
                    .as("seed %d, cost of what was found", seed)
                    .isEqualTo(found.get().cost());
            withMinimum += problem.suppliers().stream().anyMatch(t -> t.minimum() > 0) ? 1 : 0;
            withoutOffer += missing > 0 ? 1 : 0;
        }
        assertThat(withMinimum).isGreaterThan(100);
        assertThat(withoutOffer).isGreaterThan(30);
    }

    /**
     * Steiner triple systems of the affine spaces AG(d,3): points that meet every line. Optimum 5 for 9 points, 18 for
     * 27 (Fulkerson, Nemhauser and Trotter 1974, Mathematical Programming Study 2:72-81, for the latter; from memory).
     */
    @ParameterizedTest
    @CsvSource({"2, 5", "3, 18"})
    void theSteinerTripleCoversAreSolved(int dimension, int optimum) {
        PurchaseProblem lines = lines(dimension);
        assertThat(PurchaseSearch.cheapest(lines, LONG).orElseThrow().cost()).isEqualTo(100L * optimum);
    }

    @Test
    void shippingGathersWhatOneSupplierHas() {
        PurchaseProblem problem = new PurchaseProblem(
                2,
                List.of(
                        item(0, new Bid(0, 1000, 0, 3), new Bid(1, 950, 0, 3)),
                        item(1, new Bid(0, 1000, 0, 3), new Bid(1, 2000, 0, 3))),
                List.of(new Terms(500, 0), new Terms(500, 0)),
                List.of(),
                0);
        assertThat(PurchaseSearch.cheapest(problem, LONG).orElseThrow().cost()).isEqualTo(2500);
    }

    @Test
    void aMinimumOrderMakesADearerOfferWorthWhile() {
        PurchaseProblem problem = new PurchaseProblem(
                2,
                List.of(
                        item(0, new Bid(0, 600, 0, 3)),
                        item(1, new Bid(0, 500, 0, 3), new Bid(PurchaseProblem.NO_TERMS, 300, 0, 3))),
                List.of(new Terms(0, 1000)),
                List.of(),
                0);
        var found = PurchaseSearch.cheapest(problem, LONG).orElseThrow();
        assertThat(found.cost()).isEqualTo(1100);
        assertThat(found.bids()).containsExactly(0, 0);
    }

    @Test
    void waitingIsPaidForUntilTheLastPartIsThere() {
        Item slowOrDear =
                item(0, new Bid(PurchaseProblem.NO_TERMS, 1000, 0, 9), new Bid(PurchaseProblem.NO_TERMS, 1300, 0, 2));
        assertThat(cost(slowOrDear, 40)).isEqualTo(1360);
        assertThat(cost(slowOrDear, 50)).isEqualTo(1450 - 50);
        assertThat(cost(slowOrDear, 60)).isEqualTo(1420);
    }

    private static long cost(Item item, long perDay) {
        return PurchaseSearch.cheapest(new PurchaseProblem(1, List.of(item), List.of(), List.of(), perDay), LONG)
                .orElseThrow()
                .cost();
    }

    private static Item item(int number, Bid... bids) {
        BitSet self = new BitSet();
        self.set(number);
        return new Item(self, self, 0, new BitSet(), List.of(bids));
    }

    private static PurchaseProblem lines(int dimension) {
        int points = (int) Math.pow(3, dimension);
        List<int[]> lines = new ArrayList<>();
        for (int a = 0; a < points; a++) {
            for (int b = a + 1; b < points; b++) {
                int c = third(a, b, dimension);
                if (c > b) {
                    lines.add(new int[] {a, b, c});
                }
            }
        }
        List<Item> items = new ArrayList<>();
        for (int point = 0; point < points; point++) {
            int p = point;
            BitSet on = new BitSet();
            IntStream.range(0, lines.size())
                    .filter(l -> IntStream.of(lines.get(l)).anyMatch(x -> x == p))
                    .forEach(on::set);
            BitSet self = new BitSet();
            self.set(p);
            items.add(new Item(on, self, 0, new BitSet(), List.of(new Bid(PurchaseProblem.NO_TERMS, 100, 0, 1))));
        }
        return new PurchaseProblem(lines.size(), items, List.of(), List.of(), 0);
    }

    /** The point whose coordinates make those of all three sum to 0 modulo 3. */
    private static int third(int a, int b, int dimension) {
        int c = 0;
        for (int d = 0, place = 1; d < dimension; d++, place *= 3) {
            c += (6 - a / place % 3 - b / place % 3) % 3 * place;
        }
        return c;
    }

    private static PurchaseProblem invented(Random random) {
        int needs = 1 + random.nextInt(5);
        int count = 1 + random.nextInt(8);
        int suppliers = random.nextInt(4);
        int steps = random.nextInt(4);
        List<Item> items = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            BitSet covers = some(random, needs, 3);
            BitSet bundle = some(random, count, 6);
            bundle.set(i);
            List<Bid> bids = new ArrayList<>();
            for (int b = random.nextInt(6) == 0 ? 0 : 1 + random.nextInt(3); b > 0; b--) {
                bids.add(new Bid(
                        random.nextInt(suppliers + 1) - 1,
                        random.nextInt(300),
                        random.nextInt(20),
                        bids.isEmpty() ? random.nextInt(5) : random.nextInt(10)));
            }
            items.add(new Item(covers, bundle, random.nextInt(60), some(random, steps, 2), bids));
        }
        return new PurchaseProblem(
                needs,
                closed(items),
                IntStream.range(0, suppliers)
                        .mapToObj(s -> new Terms(random.nextInt(60), random.nextBoolean() ? 0 : random.nextInt(300)))
                        .toList(),
                IntStream.range(0, steps)
                        .mapToObj(s -> (long) random.nextInt(80))
                        .toList(),
                random.nextInt(3) == 0 ? 0 : random.nextInt(15));
    }

    /** What is bought alongside brings along its own. */
    private static List<Item> closed(List<Item> items) {
        List<Item> closed = new ArrayList<>();
        for (Item item : items) {
            BitSet bundle = (BitSet) item.bundle().clone();
            for (int before = 0; before != bundle.cardinality(); ) {
                before = bundle.cardinality();
                bundle.stream().toArray();
                for (int i : bundle.stream().toArray()) {
                    bundle.or(items.get(i).bundle());
                }
            }
            closed.add(new Item(item.covers(), bundle, item.work(), item.opens(), item.bids()));
        }
        return closed;
    }

    private static BitSet some(Random random, int of, int oneIn) {
        BitSet some = new BitSet();
        IntStream.range(0, of).filter(i -> random.nextInt(oneIn) == 0).forEach(some::set);
        return some;
    }

    private static IntegerProgram program(PurchaseProblem problem, int limit) {
        IntegerProgram program = new IntegerProgram();
        int wait = program.amount(problem.perDay());
        List<Integer> opened = problem.steps().stream().map(program::choice).toList();
        List<Integer> used = problem.suppliers().stream()
                .map(t -> program.choice(t.shipping()))
                .toList();
        List<Integer> bought = problem.items().stream()
                .map(i -> program.choice(i.work() + (i.missing() ? MISSING : 0)))
                .toList();
        List<Map<Integer, Double>> goods = new ArrayList<>();
        used.forEach(s -> goods.add(new HashMap<>()));
        for (int i = 0; i < bought.size(); i++) {
            Item item = problem.items().get(i);
            int self = bought.get(i);
            item.bundle().stream()
                    .filter(b -> bought.get(b) != self)
                    .forEach(b -> program.atLeast(0, Map.of(bought.get(b), 1.0, self, -1.0)));
            item.opens().stream().forEach(o -> program.atLeast(0, Map.of(opened.get(o), 1.0, self, -1.0)));
            Map<Integer, Double> one = new HashMap<>(Map.of(self, -1.0));
            for (Bid bid : item.bids()) {
                int taken = program.choice(bid.cost());
                one.put(taken, 1.0);
                program.atLeast(0, Map.of(wait, 1.0, taken, (double) -bid.days()));
                if (bid.days() > limit) {
                    program.exactly(0, Map.of(taken, 1.0));
                }
                if (bid.supplier() >= 0) {
                    program.atLeast(0, Map.of(used.get(bid.supplier()), 1.0, taken, -1.0));
                    goods.get(bid.supplier()).put(taken, (double) bid.goods());
                }
            }
            if (!item.bids().isEmpty()) {
                program.exactly(0, one);
            }
        }
        for (int n = 0; n < problem.needs(); n++) {
            Map<Integer, Double> covering = new HashMap<>();
            for (int i = 0; i < bought.size(); i++) {
                if (problem.items().get(i).covers().get(n)) {
                    covering.put(bought.get(i), 1.0);
                }
            }
            if (!covering.isEmpty()) {
                program.atLeast(1, covering);
            }
        }
        for (int s = 0; s < used.size(); s++) {
            Map<Integer, Double> sum = new HashMap<>(goods.get(s));
            sum.put(program.amount(1), 1.0);
            sum.put(used.get(s), (double) -problem.suppliers().get(s).minimum());
            program.atLeast(0, sum);
        }
        return program;
    }

    private static long recomputed(PurchaseProblem problem, PurchaseSearch.Found found) {
        long cost = found.days() * problem.perDay();
        BitSet opened = new BitSet();
        long[] goods = new long[problem.suppliers().size()];
        BitSet used = new BitSet();
        for (int i = 0; i < found.items().size(); i++) {
            Item item = problem.items().get(found.items().get(i));
            opened.or(item.opens());
            cost += item.work();
            if (found.bids().get(i) >= 0) {
                Bid bid = item.bids().get(found.bids().get(i));
                cost += bid.extra();
                if (bid.supplier() < 0) {
                    cost += bid.goods();
                } else {
                    used.set(bid.supplier());
                    goods[bid.supplier()] += bid.goods();
                }
            }
        }
        cost += opened.stream().mapToLong(s -> problem.steps().get(s)).sum();
        return cost
                + used.stream()
                        .mapToLong(s -> problem.suppliers().get(s).shipping()
                                + Math.max(problem.suppliers().get(s).minimum(), goods[s]))
                        .sum();
    }
}

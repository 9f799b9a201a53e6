package hingewise.simulation;

import hingewise.casefile.CaseFile;
import hingewise.costing.PriceBook;
import hingewise.costing.RepairCosts;
import hingewise.costing.Shop;
import hingewise.diagnosis.Diagnosis;
import hingewise.diagnosis.Diagnostician;
import hingewise.diagnosis.PossiblePhones;
import hingewise.inference.CliqueLimitException;
import hingewise.planning.Concern;
import hingewise.planning.Reckoning;
import hingewise.review.Disturbance;
import hingewise.rulebook.Family;
import hingewise.rulebook.RuleBook;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;

/**
 * Draws phones from a rule book and follows each in every manner, all meeting the same luck. The first look at a phone is
 * drawn with the phone; more phones are then drawn from all that is known after it, so that one first look serves many
 * cases and what the planner thinks is thought once where they go alike.
 */
public final class Simulation {
    private final RuleBook rules;
    private final PriceBook prices;
    private final Shop shop;
    private final int starts;
    private final int phones;
    private final Chance chance;

    /**
     * @param rules by which cases are thought about
     * @param starts how many first looks
     * @param phones how many cases begin with each
     */
    public Simulation(RuleBook rules, PriceBook prices, Shop shop, int starts, int phones, long seed) {
        this.rules = rules;
        this.prices = prices;
        this.shop = shop;
        this.starts = starts;
        this.phones = phones;
        this.chance = new Chance(seed);
    }

    /**
     * Compares the manners.
     *
     * @param noise standard deviation, in log10-odds, by which each first look's phones are drawn from a rule book of its
     *     own that differs from the one they are thought about by; 0 for the same rule book
     * @param workers where first looks are followed, each as one task
     * @param done told after each first look, in the thread that calls this
     * @throws InterruptedException if the calling thread is interrupted; what is left is then dropped
     */
    public Comparison under(double noise, ExecutorService workers, Runnable done) throws InterruptedException {
        List<Future<Optional<Comparison.Sample>>> running = new ArrayList<>();
        for (int s = 0; s < starts; s++) {
            int start = s;
            Callable<Optional<Comparison.Sample>> task = () -> sample(start, noise);
            running.add(workers.submit(task));
        }
        List<Comparison.Sample> samples = new ArrayList<>();
        try {
            for (Future<Optional<Comparison.Sample>> next : running) {
                next.get().ifPresent(samples::add);
                done.run();
            }
        } catch (ExecutionException e) {
            throw new IllegalStateException("a case could not be followed", e.getCause());
        } finally {
            running.forEach(f -> f.cancel(true));
        }
        return Comparison.of(samples, starts * phones);
    }

    /** Empty if no phone shows anything to complain of, or if all hang together too much to be reckoned exactly. */
    private Optional<Comparison.Sample> sample(int start, double noise) throws InterruptedException {
        Chance own = chance.of(start);
        List<Family> families = rules.waysOfFolding();
        String family = families.get(start % families.size()).id();
        RuleBook truth = noise == 0
                ? rules
                : Disturbance.of(rules, noise, own.of("disturbs").seed());
        try {
            Optional<CaseFile> file = new Intake(truth, family).file(own);
            return file.isEmpty()
                    ? Optional.empty()
                    : Optional.of(followed(truth, file.get(), own))
                            .filter(f -> !f.knowing().isEmpty());
        } catch (CliqueLimitException e) {
            return Optional.empty();
        }
    }

    private Comparison.Sample followed(RuleBook truth, CaseFile file, Chance own) throws InterruptedException {
        RepairCosts costs = new RepairCosts(rules, prices, shop, file.phone());
        Diagnosis believed = new Diagnostician(rules).chances(file);
        Diagnosis truly = new Diagnostician(truth).chances(file);
        Concern concern = Concern.of(believed);
        Case setting = new Case(
                rules,
                truth,
                costs,
                file,
                concern,
                new Knowledge(rules, costs, concern),
                new Reckoning(rules, costs, believed, concern),
                new Reckoning(truth, costs, truly, concern));
        PossiblePhones drawn =
                truly.possiblePhones(phones, own.of("phones after the look").seed());
        EnumMap<Manner, List<Outcome>> outcomes = new EnumMap<>(Manner.class);
        List<Double> knowing = new ArrayList<>();
        for (int p = 0; p < phones; p++) {
            Chance luck = own.of("luck").of(p);
            try {
                EnumMap<Manner, Outcome> each = new EnumMap<>(Manner.class);
                for (Manner manner : Manner.values()) {
                    if (Thread.interrupted()) {
                        throw new InterruptedException();
                    }
                    each.put(manner, manner.with(new Work(setting, specimen(setting, drawn, p, luck))));
                }
                each.forEach((manner, outcome) ->
                        outcomes.computeIfAbsent(manner, m -> new ArrayList<>()).add(outcome));
                knowing.add(
                        setting.bill().knowing(specimen(setting, drawn, p, luck).present()));
            } catch (CliqueLimitException e) {
                // The phone is set aside in all manners alike, so that what remains can be compared.
            }
        }
        return new Comparison.Sample(outcomes, knowing);
    }

    private static Specimen specimen(Case setting, PossiblePhones drawn, int number, Chance luck) {
        return new Specimen(
                drawn, number, setting.truth().causesOf(setting.file().phone().family()), luck);
    }
}

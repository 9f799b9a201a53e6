package hingewise.review;

import hingewise.assessment.Assessment;
import hingewise.assessment.Assessor;
import hingewise.casefile.CaseFile;
import hingewise.costing.PriceBook;
import hingewise.costing.Shop;
import hingewise.review.Sensitivity.Firmness;
import hingewise.review.Sensitivity.Influence;
import hingewise.rulebook.RuleBook;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.function.BiPredicate;
import java.util.stream.IntStream;

/**
 * Answers the same cases from many disturbed copies of a rule book and compares with the undisturbed answers. The same
 * draws serve every deviation, so that deviations can be compared.
 */
public final class SensitivityStudy {
    private static final int MOST_INFLUENCES = 10;

    private final RuleBook rules;
    private final PriceBook prices;
    private final Shop shop;
    private final List<String> names;
    private final List<CaseFile> files;
    private final List<Verdict> undisturbed;
    private final List<String> numbers;
    private final List<Noise> noises = new ArrayList<>();

    /**
     * @param cases case files by name
     * @param draws how many disturbed copies
     */
    public SensitivityStudy(
            RuleBook rules, PriceBook prices, Shop shop, Map<String, CaseFile> cases, int draws, long seed) {
        this.rules = rules;
        this.prices = prices;
        this.shop = shop;
        this.names = List.copyOf(cases.keySet());
        this.files = List.copyOf(cases.values());
        this.numbers = Numbers.names(rules);
        Assessor assessor = new Assessor(rules, prices, shop);
        this.undisturbed =
                files.stream().map(f -> Verdict.of(assessor.assess(f))).toList();
        Random random = new Random(seed);
        for (int d = 0; d < draws; d++) {
            noises.add(Noise.drawn(numbers, random));
        }
    }

    /** How many numbers are moved. */
    public int numbers() {
        return numbers.size();
    }

    /** What one disturbed copy answers: a verdict and the log-odds of the undisturbed leader, by case. */
    private record Answers(List<Verdict> verdicts, double[] logOdds) {}

    /**
     * Disturbs by noise of this deviation.
     *
     * @param workers where the copies are answered, each as one task
     * @param done told after each copy, in the thread that calls this
     * @throws InterruptedException if the calling thread is interrupted; what is left is then dropped
     */
    public Sensitivity under(double deviation, ExecutorService workers, Runnable done) throws InterruptedException {
        List<Future<Answers>> running = new ArrayList<>();
        for (Noise noise : noises) {
            Callable<Answers> task = () -> answer(noise.on(rules, deviation));
            running.add(workers.submit(task));
        }
        List<Answers> all = new ArrayList<>();
        try {
            for (Future<Answers> next : running) {
                all.add(next.get());
                done.run();
            }
        } catch (ExecutionException e) {
            throw new IllegalStateException("a disturbed copy of the rule book could not be answered", e.getCause());
        } finally {
            running.forEach(f -> f.cancel(true));
        }
        return summed(deviation, all);
    }

    private Answers answer(RuleBook disturbed) throws InterruptedException {
        Assessor assessor = new Assessor(disturbed, prices, shop);
        List<Verdict> verdicts = new ArrayList<>();
        double[] logOdds = new double[files.size()];
        for (int i = 0; i < files.size(); i++) {
            if (Thread.interrupted()) {
                throw new InterruptedException();
            }
            Assessment assessment = assessor.assess(files.get(i));
            verdicts.add(Verdict.of(assessment));
            double p = assessment.diagnosis().chanceOf(undisturbed.get(i).first());
            logOdds[i] = Math.log(p) - Math.log1p(-p);
        }
        return new Answers(verdicts, logOdds);
    }

    private Sensitivity summed(double deviation, List<Answers> all) {
        List<Firmness> firmness = new ArrayList<>();
        for (int i = 0; i < files.size(); i++) {
            firmness.add(new Firmness(
                    names.get(i),
                    same(all, i, (a, b) -> a.first().equals(b.first())),
                    same(all, i, (a, b) -> a.firstTry().equals(b.firstTry())),
                    same(all, i, (a, b) -> a.orders() == b.orders())));
        }
        firmness.sort(Comparator.comparingDouble(Firmness::least).thenComparing(Firmness::name));
        return new Sensitivity(
                deviation,
                (long) files.size() * all.size(),
                firmness.stream().mapToDouble(Firmness::sameFirst).average().orElse(1),
                same(all, (a, b) -> a.three().equals(b.three())),
                same(all, (a, b) -> b.three().contains(a.first())),
                firmness.stream().mapToDouble(Firmness::sameTry).average().orElse(1),
                firmness.stream().mapToDouble(Firmness::sameOrder).average().orElse(1),
                firmness,
                influences(all, (answers, i) -> answers.logOdds()[i]),
                influences(all, (answers, i) -> answers.verdicts().get(i).orders() ? 1 : 0));
    }

    private double same(List<Answers> all, int file, BiPredicate<Verdict, Verdict> alike) {
        Verdict before = undisturbed.get(file);
        return all.stream()
                .mapToDouble(a -> alike.test(before, a.verdicts().get(file)) ? 1 : 0)
                .average()
                .orElse(1);
    }

    private double same(List<Answers> all, BiPredicate<Verdict, Verdict> alike) {
        return IntStream.range(0, files.size())
                .mapToDouble(i -> same(all, i, alike))
                .average()
                .orElse(1);
    }

    private interface Outcome {
        double of(Answers answers, int file);
    }

    private List<Influence> influences(List<Answers> all, Outcome outcome) {
        List<double[]> outcomes = IntStream.range(0, files.size())
                .mapToObj(i -> Correlation.standardized(
                        all.stream().mapToDouble(a -> outcome.of(a, i)).toArray()))
                .toList();
        List<Influence> influences = new ArrayList<>();
        for (int k = 0; k < numbers.size(); k++) {
            int number = k;
            double[] moves = Correlation.standardized(
                    noises.stream().mapToDouble(n -> n.of(number)).toArray());
            double sum = 0;
            double most = 0;
            int mostIn = 0;
            for (int i = 0; i < outcomes.size(); i++) {
                double square = Correlation.squared(moves, outcomes.get(i));
                sum += square;
                if (square > most) {
                    most = square;
                    mostIn = i;
                }
            }
            influences.add(
                    new Influence(numbers.get(k), sum / outcomes.size(), names.isEmpty() ? "" : names.get(mostIn)));
        }
        return influences.stream()
                .sorted(Comparator.comparingDouble(Influence::share).reversed())
                .limit(MOST_INFLUENCES)
                .toList();
    }
}

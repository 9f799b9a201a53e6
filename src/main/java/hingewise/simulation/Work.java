package hingewise.simulation;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Entry;
import hingewise.casefile.Opened;
import hingewise.casefile.Repair;
import hingewise.casefile.Try;
import hingewise.costing.Offer;
import hingewise.diagnosis.Readings;
import hingewise.planning.Decision;
import hingewise.planning.Planning;
import hingewise.planning.Reckoning;
import hingewise.rulebook.Access;
import hingewise.rulebook.Cause;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Observation;
import hingewise.rulebook.Part;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What is done with one phone, as it happens: it changes the phone, it is recorded, and it is paid for. */
final class Work {
    /** Minutes to ask something, or to see whether the complaint is still there. */
    private static final double ASKING = 1;

    private static final String HAND = EvidenceKind.LOOK.id();

    private final Case setting;
    private final Specimen phone;
    private CaseFile file;
    private Readings readings;
    private double cost;
    private double minutes;
    private int days;
    private int fitted;
    private int needless;
    private int openings;
    private int inVain;

    Work(Case setting, Specimen phone) {
        this.setting = setting;
        this.phone = phone;
        this.file = setting.file();
        this.readings = Readings.of(setting.rules(), file);
    }

    private void record(Entry entry) {
        file = file.with(entry);
        readings = Readings.of(setting.rules(), file);
    }

    Case setting() {
        return setting;
    }

    /** Chance of a cause by id, as it is believed, in 0–1. */
    double chance(String cause) {
        return setting.knowledge().chances(file).getOrDefault(cause, 0.0);
    }

    /** What ending it now is expected to cost, if some causes are taken not to be there any more. */
    double expected(Decision.Kind kind, boolean isOpened, Set<String> gone) {
        return setting.believed()
                .expected(
                        kind,
                        isOpened,
                        c -> gone.contains(c.id()) ? 0 : chance(c.id()),
                        left -> setting.knowledge()
                                .anyOf(
                                        file,
                                        left.stream()
                                                .filter(c -> !gone.contains(c))
                                                .toList()));
    }

    Planning.Next next() {
        return setting.knowledge().next(file);
    }

    Readings readings() {
        return readings;
    }

    boolean opened() {
        return !readings().open().isEmpty();
    }

    /** Whether everything complained of is seen to be gone. */
    boolean works() {
        Map<String, Boolean> latest = readings().latest();
        return setting.concern().complaints().stream().noneMatch(c -> latest.getOrDefault(c, true));
    }

    /** Does it, unless the answer to something that must be known first forbids it. */
    void does(Confirmation c) {
        EvidenceKind kind = c.kind() == Confirmation.Kind.QUESTION ? EvidenceKind.CLAIM : EvidenceKind.LOOK;
        Map<String, Boolean> needs = needs(c.access());
        needs.putAll(c.needs());
        if (!met(needs, kind)) {
            return;
        }
        c.access().ifPresent(this::open);
        cost += setting.bill().doing(c);
        minutes += c.minutes();
        Confirmation truly = setting.truth().confirmations().getOrDefault(c.id(), c);
        pay(phone.undergoes(c.id(), truly.cures(), truly.damages()));
        record(new Try(file.nextId(), Instant.EPOCH, HAND, c.id(), ""));
        c.settles().forEach(o -> look(o, kind));
        retest();
    }

    /** What must be answered before opening as far as this. */
    private Map<String, Boolean> needs(Optional<String> access) {
        Map<String, Boolean> needs = new LinkedHashMap<>();
        setting.costs().stepsTo(access, readings().open()).forEach(a -> needs.putAll(a.needs()));
        return needs;
    }

    /** Whether all that must be answered first is, as it must be; what is not answered yet is asked. */
    private boolean met(Map<String, Boolean> needs, EvidenceKind kind) {
        for (Map.Entry<String, Boolean> need :
                setting.rules().unanswered(needs, readings().latest()).entrySet()) {
            takes(ASKING);
            look(need.getKey(), kind);
            if (!need.getValue().equals(readings().latest().getOrDefault(need.getKey(), need.getValue()))) {
                return false;
            }
        }
        return setting.rules().possible(needs, readings().latest());
    }

    /** Opens it as far as is needed, fits parts and sees whether the complaint is still there. */
    void fits(Collection<Part> parts) {
        parts.stream().flatMap(p -> p.access().stream()).forEach(this::open);
        cost += setting.bill().fitting(parts);
        minutes += parts.stream().mapToDouble(Part::minutes).sum();
        days += setting.bill().days(parts);
        Set<String> there = phone.present();
        List<Part> renewing = parts.stream().filter(p -> !p.renews().isEmpty()).toList();
        List<Part> parted =
                renewing.stream().filter(p -> p.form() != Part.Form.CONSUMABLE).toList();
        fitted += parted.size();
        needless += (int) parted.stream()
                .filter(p ->
                        causes().stream().noneMatch(c -> p.renews().contains(c.component()) && there.contains(c.id())))
                .count();
        Set<String> renewed = Reckoning.renewed(parts);
        phone.without(causes().stream()
                .filter(c -> renewed.contains(c.component()))
                .map(Cause::id)
                .collect(Collectors.toSet()));
        Map<String, List<String>> byGrade = renewing.stream()
                .collect(Collectors.groupingBy(
                        this::grade,
                        TreeMap::new,
                        Collectors.mapping(Part::id, Collectors.toCollection(ArrayList::new))));
        byGrade.forEach((grade, ids) -> record(new Repair(file.nextId(), Instant.EPOCH, HAND, ids, grade, "")));
        retest();
    }

    private String grade(Part part) {
        return setting.costs()
                .offer(part.id())
                .map(Offer::grade)
                .filter(setting.rules().grades()::containsKey)
                .orElseGet(() -> setting.rules().grades().keySet().iterator().next());
    }

    private List<Cause> causes() {
        return setting.rules().causesOf(setting.costs().family());
    }

    Outcome ends(Decision.Kind kind) {
        Set<String> there = phone.present();
        boolean left = (kind == Decision.Kind.LEAVE || kind == Decision.Kind.REPAIR)
                && setting.bill().counted().stream().anyMatch(c -> there.contains(c.id()));
        return new Outcome(
                cost + setting.bill().ending(kind, opened(), there),
                minutes + setting.bill().minutes(kind),
                days + setting.bill().days(kind),
                fitted,
                needless,
                openings,
                inVain,
                left,
                kind);
    }

    /** What opening as far as this still costs. */
    double toOpen(Optional<String> access) {
        return setting.costs().stepsTo(access, readings().open()).stream()
                .mapToDouble(setting.bill()::opening)
                .sum();
    }

    /** What buying and fitting these costs with all that must still be opened for it. */
    double toFit(Collection<Part> parts) {
        Set<String> open = readings().open();
        Set<Access> steps = new LinkedHashSet<>();
        parts.forEach(p -> steps.addAll(setting.costs().stepsTo(p.access(), open)));
        return setting.bill().fitting(parts)
                + steps.stream().mapToDouble(setting.bill()::opening).sum();
    }

    private void open(String access) {
        List<Access> steps =
                setting.costs().stepsTo(Optional.of(access), readings().open());
        for (Access step : steps) {
            cost += setting.bill().opening(step);
            minutes += step.minutes();
            openings++;
            inVain += anythingBehind(step) ? 0 : 1;
            pay(phone.undergoes("open " + step.id(), Map.of(), step.damages()));
        }
        if (!steps.isEmpty()) {
            record(new Opened(file.nextId(), Instant.EPOCH, HAND, access, ""));
        }
    }

    /** Whether something that counts is there that a part or a try behind this step puts right. */
    private boolean anythingBehind(Access step) {
        Set<String> there = phone.present();
        return setting.bill().counted().stream()
                .filter(c -> there.contains(c.id()))
                .anyMatch(c -> setting.costs().partsRenewing(c.component()).stream()
                                .anyMatch(p -> leadsThrough(p.access(), step))
                        || setting.rules().confirmations().values().stream()
                                .anyMatch(t -> t.cures().containsKey(c.id()) && leadsThrough(t.access(), step)));
    }

    private boolean leadsThrough(Optional<String> access, Access step) {
        return setting.costs().stepsTo(access, Set.of()).contains(step);
    }

    private void pay(Set<String> brought) {
        Set<String> counted = setting.bill().counted().stream().map(Cause::id).collect(Collectors.toSet());
        causes().stream()
                .filter(c -> brought.contains(c.id()) && !counted.contains(c.id()))
                .forEach(c -> cost += setting.bill().bringing(c));
    }

    private void takes(double some) {
        cost += setting.bill().work(some);
        minutes += some;
    }

    /** After something that may have changed it, each complaint is looked at again. */
    private void retest() {
        for (String complaint : setting.concern().complaints().stream().sorted().toList()) {
            if (!readings().latest().containsKey(complaint)) {
                takes(ASKING);
                look(complaint, EvidenceKind.LOOK);
            }
        }
    }

    /** Looks, where that can be done now and was not done by anything as good since the phone last changed. */
    private void look(String id, EvidenceKind kind) {
        Readings now = readings();
        Optional.ofNullable(setting.rules().observations().get(id))
                .filter(o -> o.families().contains(setting.costs().family()))
                .filter(o -> o.askable(now.latest()))
                .filter(o -> o.access().filter(a -> !now.open().contains(a)).isEmpty())
                .filter(o ->
                        now.heaviest(id).filter(k -> k.compareTo(kind) >= 0).isEmpty())
                .ifPresent(o -> record(Intake.look(file, kind, o, reported(o, kind))));
    }

    private boolean reported(Observation o, EvidenceKind kind) {
        return phone.reports(setting.truth().observations().getOrDefault(o.id(), o), kind);
    }
}

package hingewise.simulation;

import hingewise.casefile.CaseFile;
import hingewise.costing.RepairCosts;
import hingewise.planning.Concern;
import hingewise.planning.Reckoning;
import hingewise.rulebook.RuleBook;

/**
 * A case with what is believed of it and what is true.
 *
 * @param rules by which it is thought about
 * @param truth by which the phone was drawn and goes on
 * @param costs of the phone's family
 * @param file what is known before anything is done
 * @param concern what counts, from the beginning to the end
 * @param knowledge what the believed rule book makes of it
 * @param believed what things are believed to cost
 * @param bill what they cost
 */
record Case(
        RuleBook rules,
        RuleBook truth,
        RepairCosts costs,
        CaseFile file,
        Concern concern,
        Knowledge knowledge,
        Reckoning believed,
        Reckoning bill) {}

package hingewise.review;

/**
 * Something in a rule book that is probably not meant so.
 *
 * @param section the word that heads the section of the entry it concerns
 * @param id of that entry
 * @param what what is the matter; no closing full stop
 * @param advice what to do about it, as a whole sentence
 */
public record Remark(String section, String id, String what, String advice) {}

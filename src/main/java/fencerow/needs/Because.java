package fencerow.needs;

import fencerow.terms.JobId;
import fencerow.terms.OptionId;
import fencerow.terms.QuestionId;
import java.util.Optional;

/**
 * Where a requirement comes from, as data: the first links of the chain that goes on through attachment, working state
 * and capability when the requirement is matched.
 *
 * @param question the question answered
 * @param option   the option picked, where it was a choice
 * @param job      the job asked for, where it was one
 */
public record Because(QuestionId question, Optional<OptionId> option, Optional<JobId> job) {}

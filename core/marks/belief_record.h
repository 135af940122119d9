// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/marks/factor.h"
#include "core/marks/learned_catch.h"

#include <optional>
#include <vector>

namespace marks {

/// What the user holds of one reason beside what the log says of it.
struct BeliefRecord {
    /// What it multiplies the catch by, with the 80 % interval.
    struct LogSays {
        double times = 1.0;
        double low = 1.0;
        double high = 1.0;
    };
    FactorKind kind = FactorKind::depth;
    double said = 0.0; ///< The weight.
    /// Nothing where the log cannot tell: no stay was near any, or it is not asked of the log.
    std::optional<LogSays> log;
    /// What the belief alone multiplies the catch by where there is all of it that can be: beside a
    /// log, or without one.
    double saidTimes = 1.0;
    bool isAskedOfLog = false; ///< False where no stay could ever tell.
};

/// One for each factor that can be weighed, in the order of allFactorKinds. The log is asked for a
/// boat on the thing itself with the thing taking a good part of the cast: drop-off, weed edge with
/// weed beside it, the mean of humps, holes, spurs and saddles; and for a wind straight on to the
/// bank. Of the others it is not asked: depths it learns range by range, of waves it knows nothing,
/// and the rest is of the log or of the chart itself.
[[nodiscard]] std::vector<BeliefRecord> beliefRecordsOf(const Weights& weights,
                                                        const LearnedCatch* learned);

} // namespace marks

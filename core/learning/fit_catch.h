// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/learning/catch_model.h"
#include "core/learning/observation.h"

#include <vector>

namespace learning {

/// How to fit. Defaults were found good in trials on made-up seasons (ours).
struct FitSettings {
    EffectSizes sizes; ///< To start from.
    /// From this many days on the sizes of effects are renewed from the log, 1 up.
    int renewFromDays = 5;
    /// How often they are, 0 to 20.
    int renewals = 3;
    /// How many weights' worth the sizes to start from count for, above 0.
    double sizesCountFor = 5.0;
    /// Whether the size of a day's luck is renewed as well.
    bool renewDay = true;
    /// A step of Newton's method that moves no logarithm by more than this ends it.
    double enough = 0.01;
};

/// What the stays say: the weights that some stay touched, with their covariance; all others keep
/// what is held before. Newton's method on weights and days together, the days eliminated, with
/// half the posterior variance of each stay in its expectation (the Gaussian variational bound:
/// Challis and Barber 2013, JMLR 14:2239; its fixed point with the variances renewed in turn is
/// ours); sizes by MacKay's fixed point (1992, Neural Computation 4:415) with a prior.
/// Deterministic. Of no observations: the empty model.
/// \return wrongUse for settings out of range and for an observation without effort or with more
/// than 1e5 rod-hours, with fish below nought or above 1e6, or with a value that is not finite;
/// cancelled.
[[nodiscard]] base::Result<CatchModel> fitCatch(const std::vector<Observation>& observations,
                                                const FitSettings& settings,
                                                base::Progress& progress);

} // namespace learning

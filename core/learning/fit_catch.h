// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/learning/catch_model.h"
#include "core/learning/observation.h"

#include <memory>
#include <span>
#include <vector>

namespace learning {

class FitState;

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

/// What the stays say, kept: beliefs can be laid beside it without fitting anew.
class CatchFit {
public:
    /// Of an empty log.
    CatchFit() = default;
    explicit CatchFit(std::shared_ptr<const FitState> state);

    [[nodiscard]] const CatchModel& model() const { return model_; }
    /// The weights where the user holds something of the stays' places beside what he caught there:
    /// what he believes and the log does not bear out is taken back by them. How sure they are, and
    /// the sizes of effects, are those of the log alone. \param beliefs one for each observation,
    /// in their order, finite; all of them nought give model().
    [[nodiscard]] CatchModel besideBeliefs(std::span<const double> beliefs) const;

private:
    std::shared_ptr<const FitState> state_;
    CatchModel model_;
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
[[nodiscard]] base::Result<CatchFit> fitCatch(const std::vector<Observation>& observations,
                                              const FitSettings& settings,
                                              base::Progress& progress);

} // namespace learning

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/learning/catch_model.h"
#include "core/marks/looked_at.h"
#include "core/marks/mark_input.h"
#include "core/marks/plan.h"

#include <array>
#include <cstddef>
#include <utility>
#include <vector>

namespace marks {

/// What a place is worth before its ropes are known: Judgement::worth by the waves near it, or
/// without the factor for shelter where the input does not tell them; taken apart so that another
/// belief costs a few multiplications. Everything that the user's weights do not touch is worked
/// out once.
class Prospect {
public:
    /// \param input,plan of the day; the plan's weights are not looked at.
    Prospect(const MarkInput& input, const LookedAt& at, const Plan& plan);

    /// \param model the one that was in the input, or the same beside other beliefs; null where
    /// there was none.
    [[nodiscard]] double worth(const learning::CatchModel* model, const Weights& weights,
                               double eagerness) const;

private:
    struct Part {
        FactorKind kind = FactorKind::record;
        learning::CatchModel::Effect effect;
    };
    [[nodiscard]] double worthByLog(const learning::CatchModel& model, const Weights& weights,
                                    double eagerness) const;

    void takeWaves(const MarkInput& input, geo::WaterPoint place, const ExpectedDay& day);
    /// What the waves near it are worth to somebody; nothing where they are not known.
    [[nodiscard]] std::optional<double> likedWaves(const Weights& weights) const;

    std::vector<std::pair<FactorKind, double>> values_; ///< But for shelter.
    /// How high the waves are in each of the day's winds, with its share of the hours.
    std::vector<std::pair<double, std::optional<units::Length>>> waves_;
    std::vector<Part> parts_;
    double toFindOut_ = 0.0;
    double ofOtherDepth_ = 0.0;
    double withinReach_ = 1.0;
};

} // namespace marks

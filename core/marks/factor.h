// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/marks/reason.h"

#include <array>
#include <optional>
#include <string_view>
#include <vector>

namespace marks {

/// The reasons that can speak for a mark. Those that can be weighed become a number from 0 to 1 by
/// a documented monotone map from a physical quantity.
enum class FactorKind {
    depth,    ///< Depths that the user wants to fish, within a cast.
    dropOff,  ///< Metres of drop-off edge within a cast.
    weedEdge, ///< Metres of weed edge within a cast.
    feature,  ///< Humps, holes, spurs, saddles within a cast.
    windward, ///< How the wind blows on to it, as the log tells; its weight is a liking for ripple.
    shelter,  ///< Waves at the lie, as they are liked; its weight is a liking for a calm.
    record,   ///< What the log says of the place.
    lessTried,  ///< How little the log knows of the place.
    trust,      ///< How well the depth is known.
    bottom,     ///< Other kinds of bottom, as far as the log tells them apart; has no weight.
    hour,       ///< The hours planned, as far as the log tells them apart; has no weight.
    bestOfMany, ///< What the program chose for looking best looks better than it is; has no weight.
};

/// Those that the user can weigh.
inline constexpr std::array allFactorKinds{
    FactorKind::depth,   FactorKind::dropOff,   FactorKind::weedEdge,
    FactorKind::feature, FactorKind::windward,  FactorKind::shelter,
    FactorKind::record,  FactorKind::lessTried, FactorKind::trust};

/// The name in reports and for --weights: "depth", "drop_off", "weed_edge", "feature", "windward",
/// "shelter", "record", "less_tried", "trust"; in reports alone "bottom", "hour",
/// "best_of_many".
[[nodiscard]] std::string_view nameOf(FactorKind kind);
[[nodiscard]] std::optional<FactorKind> factorNamed(std::string_view name);

/// What matters to the user: a weight from 0 (not at all) up for each factor that can be weighed.
/// See beliefs.h for what it does.
class Weights {
public:
    /// depth 1, drop-off 1, weed edge 0.6, feature 0.6, windward 0.4, shelter 0.4, record 0.8, less
    /// tried 0.3, trust 0.3.
    Weights();
    /// 0 for a factor that cannot be weighed.
    [[nodiscard]] double of(FactorKind kind) const {
        const auto k = static_cast<std::size_t>(kind);
        return k < weight_.size() ? weight_[k] : 0.0;
    }
    /// Negative and non-finite weights become 0. \param kind one that can be weighed.
    void set(FactorKind kind, double weight);
    [[nodiscard]] double sum() const;
    friend bool operator==(const Weights&, const Weights&) = default;

private:
    std::array<double, allFactorKinds.size()> weight_{};
};

/// One reason in a mark's score.
struct Factor {
    FactorKind kind = FactorKind::depth;
    double value = 0.0; ///< 0 to 1; 0 for a factor that cannot be weighed.
    double weight = 0.0;
    Reason because;     ///< The quantities behind it.
    double times = 1.0; ///< What it multiplies the water's mean by; all of them give the score.
};

} // namespace marks

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/marks/factor.h"

#include <cmath>
#include <numeric>

namespace marks {

std::string_view nameOf(FactorKind kind) {
    switch (kind) {
    case FactorKind::depth:
        return "depth";
    case FactorKind::dropOff:
        return "drop_off";
    case FactorKind::weedEdge:
        return "weed_edge";
    case FactorKind::feature:
        return "feature";
    case FactorKind::windward:
        return "windward";
    case FactorKind::shelter:
        return "shelter";
    case FactorKind::record:
        return "record";
    case FactorKind::lessTried:
        return "less_tried";
    case FactorKind::trust:
        return "trust";
    case FactorKind::bottom:
        return "bottom";
    case FactorKind::hour:
        return "hour";
    case FactorKind::bestOfMany:
        return "best_of_many";
    }
    return "";
}

std::optional<FactorKind> factorNamed(std::string_view name) {
    for (const FactorKind kind : allFactorKinds) {
        if (nameOf(kind) == name) {
            return kind;
        }
    }
    return std::nullopt;
}

Weights::Weights() {
    set(FactorKind::depth, 1.0);
    set(FactorKind::dropOff, 1.0);
    set(FactorKind::weedEdge, 0.6);
    set(FactorKind::feature, 0.6);
    set(FactorKind::windward, 0.4);
    set(FactorKind::shelter, 0.4);
    set(FactorKind::record, 0.8);
    set(FactorKind::lessTried, 0.3);
    set(FactorKind::trust, 0.3);
}

void Weights::set(FactorKind kind, double weight) {
    weight_[static_cast<std::size_t>(kind)] = std::isfinite(weight) && weight > 0.0 ? weight : 0.0;
}

double Weights::sum() const {
    return std::accumulate(weight_.begin(), weight_.end(), 0.0);
}

} // namespace marks

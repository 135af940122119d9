// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/typed_id.h"
#include "core/geo/lon_lat.h"
#include "core/logbook/conditions.h"
#include "core/logbook/fish.h"

#include <optional>
#include <string>
#include <vector>

namespace logbook {

using StayId = base::TypedId<struct StayKind>;

/// The time anchored on one mark: the unit of effort. A stay without fish is a blank and counts as
/// much as a catch.
struct Stay {
    StayId id;
    units::Moment start;
    units::Moment end; ///< Not before start.
    geo::LonLat place;
    std::optional<int> rods; ///< In the water, at least 1; nothing where nobody noted it.
    std::string bait;
    Conditions conditions;
    std::string note;
    std::vector<Fish> runs; ///< By time, those without one first; landed and lost.
    std::string who;        ///< Who fished: "Anna", or "Anna, Ben" from one boat; empty: unknown.
    std::optional<geo::LonLat> baitPlace; ///< The middle of where the baits lay.
    std::string photograph;               ///< A path, from the water's folder where it can be.
    std::vector<OtherField> others;       ///< By column, each once, none empty.

    /// Rods times hours; nothing where the rods are not known, or how long they were out (it ends
    /// when it begins): such a stay counts in no rate.
    [[nodiscard]] std::optional<double> rodHours() const {
        const double hours = std::chrono::duration<double, std::ratio<3600>>(end - start).count();
        return rods && hours > 0.0 ? std::optional(*rods * hours) : std::nullopt;
    }
    [[nodiscard]] int fishCount() const;
    [[nodiscard]] bool isBlank() const { return fishCount() == 0; }
    friend bool operator==(const Stay&, const Stay&) = default;
};

} // namespace logbook

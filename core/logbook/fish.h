// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/typed_id.h"
#include "core/geo/lon_lat.h"
#include "core/logbook/other_field.h"
#include "core/units/depth.h"
#include "core/units/length.h"
#include "core/units/moment.h"
#include "core/units/weight.h"

#include <optional>
#include <string>
#include <vector>

namespace logbook {

using FishId = base::TypedId<struct FishKind>;

/// A run: a take, landed or lost. A landed one is a fish; only landed ones carry species and size.
struct Fish {
    FishId id;
    std::optional<units::Moment> time; ///< Nothing where nobody noted it.
    bool landed = true;                ///< False for a lost run.
    std::string species;
    std::string bait;
    std::optional<units::Weight> weight;
    std::optional<units::Length> length;
    std::optional<units::Depth> baitDepth;
    std::string note;
    std::string who;                      ///< Who took it, where it is said of this fish alone.
    std::string hooked;                   ///< Where the hook held: "scissors".
    std::optional<bool> returned;         ///< Put back alive; nothing where nobody says.
    std::optional<geo::LonLat> baitPlace; ///< Where the bait lay.
    std::string photograph;               ///< A path, from the water's folder where it can be.
    std::vector<OtherField> others;       ///< By column, each once, none empty.
    friend bool operator==(const Fish&, const Fish&) = default;
};

} // namespace logbook

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/typed_id.h"
#include "core/units/depth.h"
#include "core/units/length.h"
#include "core/units/moment.h"
#include "core/units/weight.h"

#include <optional>
#include <string>

namespace logbook {

using FishId = base::TypedId<struct FishKind>;

/// A run: a take, landed or lost. A landed one is a fish; only landed ones carry species and size.
struct Fish {
    FishId id;
    units::Moment time;
    bool landed = true; ///< False for a lost run.
    std::string species;
    std::string bait;
    std::optional<units::Weight> weight;
    std::optional<units::Length> length;
    std::optional<units::Depth> baitDepth;
    std::string note;
    friend bool operator==(const Fish&, const Fish&) = default;
};

} // namespace logbook

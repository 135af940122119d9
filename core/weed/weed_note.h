// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/typed_id.h"
#include "core/geo/lon_lat.h"
#include "core/units/length.h"

#include <optional>
#include <string_view>

namespace weed {

/// How much weed was met.
enum class Growth { none, thin, thick };

/// "none", "thin", "thick".
[[nodiscard]] std::string_view nameOf(Growth growth);
[[nodiscard]] std::optional<Growth> growthNamed(std::string_view name);

using WeedNoteId = base::TypedId<struct WeedNoteKind>;

/// What the angler noted at one place.
struct WeedNote {
    WeedNoteId id;
    geo::LonLat place;
    Growth growth = Growth::none;
    std::optional<units::Length> height; ///< Above the bottom.
    friend bool operator==(const WeedNote&, const WeedNote&) = default;
};

} // namespace weed

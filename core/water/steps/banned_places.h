// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/geo/outline.h"
#include "core/water/document/water.h"

#include <string>
#include <utility>
#include <vector>

namespace water {

/// The banned water of a water in its frame, to be asked place by place: to the line, and not by
/// cells, for it has no margin.
class BannedPlaces {
public:
    /// \param water with a frame. \return the error of Outline::make() for a ban whose line crosses
    /// itself, with its name.
    [[nodiscard]] static base::Result<BannedPlaces> of(const Water& water);

    /// The name of the first ban that holds the place; null where none does.
    [[nodiscard]] const std::string* at(geo::WaterPoint place) const;
    [[nodiscard]] bool areAny() const { return !banned_.empty(); }

private:
    std::vector<std::pair<std::string, geo::Outline>> banned_;
};

} // namespace water

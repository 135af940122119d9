// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/lon_lat.h"
#include "core/units/moment.h"

#include <string>
#include <vector>

namespace water {

/// What stood on a sheet that was made for the boat. The plan goes on to the next day and is
/// changed there; the sheet stays, to be written up whenever there is time.
struct BoatSheet {
    struct Stop {
        int rank = 0;       ///< The number of its mark on the sheet.
        std::string called; ///< As the sheet calls it, without the number; may be empty.
        geo::LonLat place;
        units::Moment from; ///< Once the ropes are tight.
        units::Moment to;
        friend bool operator==(const Stop&, const Stop&) = default;
    };
    units::Day day{};
    std::vector<Stop> stops; ///< In the order of the day.
    friend bool operator==(const BoatSheet&, const BoatSheet&) = default;
};

} // namespace water

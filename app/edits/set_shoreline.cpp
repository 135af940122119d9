// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/set_shoreline.h"

#include "app/edits/change_water.h"

namespace edits {

base::Result<void> setShoreline(open_water::OpenWater& open,
                                std::vector<geo::LonLatPiece> shoreline) {
    std::optional<geo::WaterFrame> frame = open.water()->frame;
    if (!frame && !shoreline.empty()) {
        water::Water trial;
        trial.shoreline = shoreline;
        if (auto laid = water::layFrame(trial); !laid) {
            return laid;
        }
        frame = trial.frame;
    }
    std::vector<water::Part> parts{water::Part::shoreline};
    if (frame != open.water()->frame) {
        parts.push_back(water::Part::facts);
    }
    change(open, QObject::tr("Set shoreline"), parts, [&](water::Water& water) {
        water.shoreline = shoreline;
        water.frame = frame;
    });
    return {};
}

} // namespace edits

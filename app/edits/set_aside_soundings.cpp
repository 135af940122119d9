// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/set_aside_soundings.h"

#include "app/edits/change_water.h"

#include <algorithm>
#include <iterator>

namespace edits {

void setAsideSoundings(open_water::OpenWater& open, const water::SoundingChoice& choice) {
    change(open, QObject::tr("Set soundings aside"), {water::Part::days}, [&](water::Water& water) {
        for (std::size_t d = 0; d < std::min(choice.size(), water.days.size()); ++d) {
            soundings::SurveyDay& day = water.days[d];
            std::vector<std::size_t> aside;
            std::ranges::set_union(day.setAsideByHand, choice[d], std::back_inserter(aside));
            std::vector<std::size_t> kept;
            std::ranges::set_difference(day.keptByHand, choice[d], std::back_inserter(kept));
            day.setAsideByHand = std::move(aside);
            day.keptByHand = std::move(kept);
        }
    });
}

} // namespace edits

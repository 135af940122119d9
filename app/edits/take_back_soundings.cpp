// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/take_back_soundings.h"

#include "app/edits/change_water.h"

#include <algorithm>
#include <iterator>

namespace edits {

namespace {

/// Of `chosen`, those that a rule has set aside.
std::vector<std::size_t> setAsideByRule(const reduction::ReducedDay& day,
                                        const std::vector<std::size_t>& chosen) {
    using soundings::Verdict;
    std::vector<std::size_t> found;
    std::ranges::copy_if(chosen, std::back_inserter(found), [&day](std::size_t i) {
        return i < day.verdicts.size() && day.verdicts[i] != Verdict::kept &&
               day.verdicts[i] != Verdict::byHand;
    });
    return found;
}

} // namespace

void takeBackSoundings(open_water::OpenWater& open, const water::SoundingChoice& choice) {
    const auto checked = open.derived().checked;
    if (!checked) {
        return;
    }
    const auto& judged = checked->survey.days;
    change(open, QObject::tr("Take soundings back"), {water::Part::days}, [&](water::Water& water) {
        for (std::size_t d = 0; d < std::min({choice.size(), water.days.size(), judged.size()});
             ++d) {
            soundings::SurveyDay& day = water.days[d];
            std::vector<std::size_t> aside;
            std::ranges::set_difference(day.setAsideByHand, choice[d], std::back_inserter(aside));
            std::vector<std::size_t> kept;
            std::ranges::set_union(day.keptByHand, setAsideByRule(judged[d], choice[d]),
                                   std::back_inserter(kept));
            day.setAsideByHand = std::move(aside);
            day.keptByHand = std::move(kept);
        }
    });
}

} // namespace edits

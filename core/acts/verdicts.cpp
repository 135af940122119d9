// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/acts/verdicts.h"

#include <algorithm>
#include <iterator>

namespace acts {

using base::Result;
using soundings::Verdict;
using water::SoundingChoice;
using water::Water;

namespace {

using Positions = std::vector<std::size_t>;

Positions with(const Positions& some, const Positions& more) {
    Positions all;
    std::ranges::set_union(some, more, std::back_inserter(all));
    return all;
}

Positions without(const Positions& some, const Positions& less) {
    Positions left;
    std::ranges::set_difference(some, less, std::back_inserter(left));
    return left;
}

/// A list that comes out as it was stays the very same, which costs no undo step anything.
void put(base::SharedList<std::size_t>& list, Positions positions) {
    if (!(list == positions)) {
        list = std::move(positions);
    }
}

/// Of `chosen`, those that a rule has set aside.
Positions setAsideByRule(const reduction::ReducedDay& day, const Positions& chosen) {
    Positions found;
    std::ranges::copy_if(chosen, std::back_inserter(found), [&day](std::size_t i) {
        return day.verdicts[i] != Verdict::kept && day.verdicts[i] != Verdict::byHand;
    });
    return found;
}

/// Whether the verdicts are on just as many soundings as the water has: else a day came or went.
bool isOfNow(const Water& water, const reduction::ReducedSurvey& judged) {
    return std::ranges::equal(
        water.days, judged.days, {},
        [](const soundings::SurveyDay& day) { return day.soundings.size(); },
        [](const reduction::ReducedDay& day) { return day.verdicts.size(); });
}

Result<void> checkThere(const Water& water, const SoundingChoice& choice) {
    for (std::size_t d = 0; d < choice.size(); ++d) {
        if (!choice[d].empty() &&
            (d >= water.days.size() || choice[d].back() >= water.days[d].soundings.size())) {
            return base::fail(base::ErrorKind::wrongUse, "the water has no such sounding",
                              "survey days", "choose them anew on the chart");
        }
    }
    return {};
}

} // namespace

Result<Water> setAsideSoundings(const Water& water, const SoundingChoice& choice) {
    if (auto there = checkThere(water, choice); !there) {
        return std::unexpected(there.error());
    }
    Water after = water;
    for (std::size_t d = 0; d < std::min(choice.size(), after.days.size()); ++d) {
        soundings::SurveyDay& day = after.days[d];
        put(day.setAsideByHand, with(day.setAsideByHand, choice[d]));
        put(day.keptByHand, without(day.keptByHand, choice[d]));
    }
    return after;
}

Result<Water> takeBackSoundings(const Water& water, const SoundingChoice& choice,
                                const reduction::ReducedSurvey& judged) {
    if (auto there = checkThere(water, choice); !there) {
        return std::unexpected(there.error());
    }
    if (!isOfNow(water, judged)) {
        return base::fail(base::ErrorKind::wrongUse, "the soundings are just being looked over", "",
                          "try once more when that is done");
    }
    Water after = water;
    for (std::size_t d = 0; d < std::min(choice.size(), after.days.size()); ++d) {
        soundings::SurveyDay& day = after.days[d];
        put(day.setAsideByHand, without(day.setAsideByHand, choice[d]));
        put(day.keptByHand, with(day.keptByHand, setAsideByRule(judged.days[d], choice[d])));
    }
    return after;
}

} // namespace acts

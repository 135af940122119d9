// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/part_days.h"

#include <algorithm>
#include <chrono>

namespace water {

namespace {

using soundings::SurveyDay;

constexpr std::chrono::hours nightBetween{4};

/// Positions at which a new day begins, the first of all among them.
std::vector<std::size_t> dayStarts(const SurveyDay& whole, const units::Clock& clock) {
    std::vector<std::size_t> starts{0};
    std::optional<units::Moment> last;
    for (std::size_t i = 0; i < whole.soundings.size(); ++i) {
        const auto& time = whole.soundings[i].time;
        if (!time) {
            continue;
        }
        const bool isAfterBreak = last && std::chrono::abs(*time - *last) > nightBetween;
        if (isAfterBreak && clock.dayOf(*time) != clock.dayOf(*last)) {
            starts.push_back(i);
        }
        last = time;
    }
    return starts;
}

/// What of ascending positions lies in the part, counted from its beginning.
std::vector<std::size_t> within(const std::vector<std::size_t>& positions, std::size_t from,
                                std::size_t to) {
    std::vector<std::size_t> part;
    for (const std::size_t position : positions) {
        if (position >= from && position < to) {
            part.push_back(position - from);
        }
    }
    return part;
}

SurveyDay partOf(const SurveyDay& whole, std::size_t from, std::size_t to,
                 const units::Clock& clock) {
    SurveyDay day = whole;
    const auto first = whole.soundings.begin() + static_cast<std::ptrdiff_t>(from);
    const auto last = whole.soundings.begin() + static_cast<std::ptrdiff_t>(to);
    day.soundings = std::vector<soundings::Sounding>(first, last);
    std::vector<std::size_t> passes = within(whole.passStarts, from, to);
    if (passes.empty() || passes.front() != 0) {
        passes.insert(passes.begin(), 0);
    }
    day.passStarts = std::move(passes);
    day.setAsideByHand = within(whole.setAsideByHand, from, to);
    day.keptByHand = within(whole.keptByHand, from, to);
    day.waterTemperature.reset();
    const auto dated = std::ranges::find_if(
        day.soundings.all(), [](const soundings::Sounding& s) { return s.time.has_value(); });
    if (dated != day.soundings.end()) {
        day.name = units::isoText(clock.dayOf(*dated->time));
    }
    return day;
}

} // namespace

std::vector<SurveyDay> partedByDays(SurveyDay whole, const units::Clock& clock) {
    const std::vector<std::size_t> starts = dayStarts(whole, clock);
    if (starts.size() == 1) {
        return {std::move(whole)};
    }
    std::vector<SurveyDay> days;
    for (std::size_t k = 0; k < starts.size(); ++k) {
        const std::size_t to = k + 1 < starts.size() ? starts[k + 1] : whole.soundings.size();
        days.push_back(partOf(whole, starts[k], to, clock));
    }
    return days;
}

} // namespace water

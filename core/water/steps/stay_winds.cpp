// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/stay_winds.h"

#include "core/marks/judgement.h"
#include "core/marks/propose_marks.h"
#include "core/marks/winds_of_day.h"

#include <algorithm>
#include <array>

namespace water {

namespace {

constexpr double notThen = -1.0;

/// Since the midnight of the planned day.
std::chrono::seconds hourOf(const marks::ExpectedDay& day, const units::Clock& clock,
                            units::Moment moment) {
    return day.start +
           std::chrono::floor<std::chrono::seconds>(moment - clock.at(day.day, day.start));
}

bool isTooRough(const std::optional<marks::WaveState>& waves) {
    return waves && waves->height > marks::ProposeSettings().roughest;
}

/// The waves at a mark before and after the turn, before anything is laid for its stay.
std::array<std::optional<marks::WaveState>, 2> wavesOf(const marks::Mark& mark) {
    std::array<std::optional<marks::WaveState>, 2> waves;
    if (mark.fetch && mark.waveHeight) {
        waves[0] = marks::WaveState{*mark.fetch, *mark.waveHeight};
    }
    waves[1] = mark.later ? mark.later->waves : std::nullopt;
    return waves;
}

double weightIn(const marks::MarkInput& input, const PlannedDay& planned, const marks::Mark& mark,
                const marks::Surroundings& around, std::size_t part) {
    const auto waves = wavesOf(mark)[part];
    if (isTooRough(waves) && !mark.isPinned) {
        return notThen;
    }
    marks::Plan plan = planned.plan;
    plan.day.wind = marks::windsOf(planned.plan.day)[part].wind;
    plan.day.windLater.reset();
    const auto chosenBy = mark.isPinned ? marks::ChosenBy::user : marks::ChosenBy::program;
    const auto judged = marks::judgementOf(input, around, mark.place, plan, waves, chosenBy);
    return mark.score > 0.0 ? judged.score / mark.score : 1.0;
}

std::vector<marks::WindOfHours> windsOf(const PlannedDay& planned, const marks::DayStop& stop,
                                        const units::Clock& clock) {
    const marks::ExpectedDay& day = planned.plan.day;
    return marks::windsBetween(day, hourOf(day, clock, stop.arrive),
                               hourOf(day, clock, stop.leave));
}

/// Whether this is the wind after the turn.
bool isLater(const marks::ExpectedDay& day, const marks::WindOfHours& part) {
    return day.windLater && part.from >= day.windLater->at;
}

/// Where one of both is not known, neither is the higher.
std::optional<marks::WaveState> higher(const std::array<std::optional<marks::WaveState>, 2>& of) {
    if (!of[0] || !of[1]) {
        return std::nullopt;
    }
    return of[1]->height > of[0]->height ? of[1] : of[0];
}

} // namespace

bool isOfTheLie(const marks::Caution& caution) {
    return std::holds_alternative<marks::WavesHere>(caution) ||
           std::holds_alternative<marks::RoomForRods>(caution);
}

void layIn(const std::optional<marks::WaveState>& waves, marks::Mark& mark) {
    mark.fetch = waves ? std::optional(waves->fetch) : std::nullopt;
    mark.waveHeight = waves ? std::optional(waves->height) : std::nullopt;
}

std::function<double(std::size_t, units::Moment)>
stopWeightOf(const marks::MarkInput& input, const PlannedDay& planned, const units::Clock& clock) {
    if (marks::windsOf(planned.plan.day).size() < 2) {
        return {};
    }
    std::vector<std::array<double, 2>> weights;
    for (const marks::Mark& mark : planned.marks) {
        const auto around = marks::surroundingsOf(input, mark.place, planned.plan.tackle.cast);
        weights.push_back(
            {weightIn(input, planned, mark, around, 0), weightIn(input, planned, mark, around, 1)});
    }
    return [weights, day = planned.plan.day, clock](std::size_t stop, units::Moment moment) {
        const bool isAfter = day.windLater && hourOf(day, clock, moment) >= day.windLater->at;
        return weights[stop][isAfter ? 1 : 0];
    };
}

std::vector<int> roughStays(const PlannedDay& planned, const marks::DayPlan& day,
                            const units::Clock& clock) {
    std::vector<const marks::Mark*> rough;
    for (const marks::DayStop& stop : day.stops) {
        const auto mark = std::ranges::find(planned.marks, stop.rank, &marks::Mark::rank);
        if (mark == planned.marks.end() || mark->isPinned || !mark->later) {
            continue;
        }
        const auto waves = wavesOf(*mark);
        const auto winds = windsOf(planned, stop, clock);
        if (std::ranges::any_of(winds, [&](const marks::WindOfHours& part) {
                return isTooRough(waves[isLater(planned.plan.day, part) ? 1 : 0]);
            })) {
            rough.push_back(&*mark);
        }
    }
    std::ranges::stable_sort(rough, {}, [](const marks::Mark* mark) { return mark->score; });
    std::vector<int> ranks;
    std::ranges::transform(rough, std::back_inserter(ranks),
                           [](const marks::Mark* mark) { return mark->rank; });
    return ranks;
}

base::Result<void> layForStays(PlannedDay& planned, const units::Clock& clock,
                               const marks::RodsFor& rodsFor) {
    for (marks::DayStop& stop : planned.day.stops) {
        const auto winds = windsOf(planned, stop, clock);
        const auto longest = std::ranges::max_element(winds, {}, &marks::WindOfHours::share);
        stop.wind = longest->wind;
        const auto mark = std::ranges::find(planned.marks, stop.rank, &marks::Mark::rank);
        if (mark == planned.marks.end() || !mark->later) {
            continue;
        }
        const bool isForLater = isLater(planned.plan.day, *longest);
        const auto waves = wavesOf(*mark);
        layIn(winds.size() > 1 ? higher(waves) : waves[isForLater ? 1 : 0], *mark);
        if (isForLater) {
            mark->anchors = mark->later->anchors;
            auto spread = rodsFor(mark->pinnedAt.value_or(mark->place), mark->anchors);
            if (!spread) {
                return std::unexpected(spread.error());
            }
            mark->spread = std::move(*spread);
        }
        std::erase_if(mark->cautions, isOfTheLie);
        const auto lying = marks::lyingCautions(
            mark->waveHeight, static_cast<int>(mark->spread.rods.size()), planned.plan.tackle.rods);
        mark->cautions.insert(mark->cautions.end(), lying.begin(), lying.end());
        if (winds.size() > 1) {
            mark->cautions.emplace_back(marks::WindTurnsHere{winds.back().from, isForLater});
        }
    }
    return {};
}

} // namespace water

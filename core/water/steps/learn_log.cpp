// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/learn_log.h"

#include "core/learning/seasons.h"
#include "core/marks/beliefs.h"
#include "core/marks/factor_values.h"
#include "core/marks/place_features.h"
#include "core/rates/grouping.h"
#include "core/water/document/grouped_log.h"

#include <algorithm>
#include <charconv>
#include <map>

namespace water {

namespace {

constexpr int hoursOfBlock = 2;
constexpr double longestStay_rodHours = 1e4;

/// The key of a block named as rates::hourBlock() does: "06-08" begins at 6.
std::int64_t keyOf(const std::string& block) {
    int hour = 0;
    std::from_chars(block.data(), block.data() + block.size(), hour);
    return hour / hoursOfBlock;
}

/// Each block that the planned day reaches into, with its share.
learning::Features hoursOf(const marks::ExpectedDay& day) {
    constexpr std::chrono::hours block(hoursOfBlock);
    const auto length = day.end - day.start;
    learning::Features hours;
    for (auto from = day.start; from < day.end;) {
        const auto to = std::min<std::chrono::seconds>(day.end, (from / block + 1) * block);
        const auto key = static_cast<std::int64_t>(from / block) % (24 / hoursOfBlock);
        const double share =
            static_cast<double>((to - from).count()) / static_cast<double>(length.count());
        const auto known = std::ranges::find(hours, key, &learning::Feature::key);
        if (known != hours.end()) {
            known->value += share;
        } else {
            hours.push_back({learning::Group::hour, key, share});
        }
        from = to;
    }
    return hours;
}

/// What is known of one stay before it is cut by hours.
struct StayPlace {
    learning::Features features;
    FittedLog::Values values;
    int day = 0;
};

class Stays {
public:
    Stays(const Water& water, const marks::MarkInput& input, const marks::Plan& plan)
        : water_(water), input_(input), plan_(plan), seasons_(daysOf(water, plan)) {}

    [[nodiscard]] const learning::Seasons& seasons() const { return seasons_; }

    /// Nothing where the stay lies on no water of today's.
    std::optional<StayPlace> lookAt(const logbook::Stay& stay) {
        const geo::WaterPoint place = water_.frame->toWater(stay.place);
        if (!input_.ground.depthAt(place)) {
            return std::nullopt;
        }
        const auto around = marks::surroundingsOf(input_, place, plan_.tackle.cast);
        const units::Day day = water_.clock.dayOf(stay.start);
        marks::Circumstances then;
        then.season = seasons_.slotOf(day);
        then.waterTemperature = stay.conditions.waterTemperature;
        if (stay.conditions.windFrom && stay.conditions.windSpeed) {
            then.windward = marks::windwardValue(
                marks::windUpSlope({*stay.conditions.windFrom, *stay.conditions.windSpeed},
                                   around.riseEast, around.riseNorth));
        }
        StayPlace out;
        out.features = marks::joined(marks::placeFeaturesOf(input_, around, place, then));
        out.values = valuesOf(around, then.windward);
        out.day = days_.emplace(day, static_cast<int>(days_.size())).first->second;
        return out;
    }

private:
    static std::vector<units::Day> daysOf(const Water& water, const marks::Plan& plan) {
        std::vector<units::Day> days{plan.day.day};
        for (const logbook::Stay& stay : water.log) {
            days.push_back(water.clock.dayOf(stay.start));
        }
        return days;
    }

    /// As of a mark; of the waves at a stay nobody knows.
    [[nodiscard]] FittedLog::Values valuesOf(const marks::Surroundings& around,
                                             double windward) const {
        FittedLog::Values values;
        for (const marks::Factor& factor :
             marks::factorsOf(input_.ground.limit(), around, plan_, std::nullopt, std::nullopt)) {
            const bool isWind = factor.kind == marks::FactorKind::windward;
            values.emplace_back(factor.kind, isWind ? windward : factor.value);
        }
        return values;
    }

    const Water& water_;
    const marks::MarkInput& input_;
    const marks::Plan& plan_;
    learning::Seasons seasons_;
    std::map<units::Day, int> days_;
};

int landedOf(const rates::GroupedStay& part) {
    return static_cast<int>(
        std::ranges::count_if(part.runs, [](const logbook::Fish* run) { return run->landed; }));
}

} // namespace

base::Result<FittedLog> fitLog(const Water& water, const marks::MarkInput& input,
                               const marks::Plan& plan, base::Progress& progress) {
    FittedLog out;
    Stays stays(water, input, plan);
    out.season = stays.seasons().slotOf(plan.day.day);
    std::map<const logbook::Stay*, std::pair<StayPlace, std::size_t>> places;
    for (const logbook::Stay& stay : water.log) {
        if (progress.stopAsked()) {
            return std::unexpected(base::cancelled());
        }
        const double effort = stay.rodHours().value_or(0.0);
        const bool hasEffort = effort > 0.0 && effort <= longestStay_rodHours;
        auto place = hasEffort ? stays.lookAt(stay) : std::nullopt;
        out.withoutEffort += hasEffort ? 0U : 1U;
        out.elsewhere += hasEffort && !place ? 1U : 0U;
        if (place) {
            out.valuesOfStays.push_back(std::move(place->values));
            places.emplace(&stay, std::pair(std::move(*place), out.valuesOfStays.size() - 1));
        }
    }
    std::vector<learning::Observation> observations;
    const auto byHour = [&](std::span<const logbook::Stay> of) {
        return rates::byHour(of, water.clock, hoursOfBlock);
    };
    for (const rates::GroupedStay& part : groupsOf(water.log, byHour)) {
        const auto found = places.find(part.stay);
        if (found != places.end() && part.rodHours > 0.0) {
            const auto& [place, number] = found->second;
            learning::Observation one{place.features, part.rodHours, landedOf(part), place.day};
            if (part.group != rates::notNoted) { // when a fish of it was taken nobody knows
                one.features.push_back({learning::Group::hour, keyOf(part.group), 1.0});
            }
            observations.push_back(std::move(one));
            out.stayOfEach.push_back(number);
        }
    }
    auto fit = learning::fitCatch(observations, {}, progress);
    if (!fit) {
        return std::unexpected(fit.error());
    }
    out.fit = std::move(*fit);
    return out;
}

LearnedLog learnedFor(const FittedLog& fitted, const marks::Plan& plan) {
    LearnedLog out;
    out.stays = fitted.valuesOfStays.size();
    out.elsewhere = fitted.elsewhere;
    out.withoutEffort = fitted.withoutEffort;
    if (fitted.fit.model().isEmpty()) {
        return out;
    }
    std::vector<double> ofStays;
    for (const FittedLog::Values& values : fitted.valuesOfStays) {
        double sum = 0.0;
        for (const auto& [kind, value] : values) {
            sum += marks::believedBesideLog(plan.weights, kind, value);
        }
        ofStays.push_back(sum);
    }
    std::vector<double> beliefs;
    for (const std::size_t stay : fitted.stayOfEach) {
        beliefs.push_back(ofStays[stay]);
    }
    const double hours =
        std::chrono::duration<double, std::ratio<3600>>(plan.day.end - plan.day.start).count();
    out.learned = marks::LearnedCatch{fitted.fit.besideBeliefs(beliefs), plan.day.waterTemperature,
                                      fitted.season, hoursOf(plan.day),
                                      std::max(plan.tackle.rods * hours / plan.count, 0.1)};
    return out;
}

} // namespace water

// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/looking_back/stay_entry.h"

#include "app/wording/doubts.h"
#include "app/wording/typed_amount.h"
#include "core/base/made_of_chunks.h"
#include "core/units/written_time.h"

#include <algorithm>
#include <map>
#include <ranges>

namespace days::looking_back {

using logbook::Fish;
using logbook::Stay;
using wording::Words;

namespace {

constexpr int mostRods = 8;
constexpr auto aDay = std::chrono::hours(24);

/// Absent where nothing is typed; nothing in it where it is no number of rods.
std::optional<std::optional<int>> rodsTyped(const QString& text) {
    if (text.isEmpty()) {
        return std::nullopt;
    }
    bool isNumber = false;
    const int rods = text.toInt(&isNumber);
    return isNumber && rods >= 1 && rods <= mostRods ? std::optional(rods) : std::optional<int>();
}

/// A time of the day of `near`, or a day and a time.
std::optional<units::Moment> momentTyped(const QString& text, units::Moment near,
                                         const units::Clock& clock) {
    return text.isEmpty() ? std::nullopt : units::momentWritten(text.toStdString(), near, clock);
}

/// How often each word was used; the empty one never.
using Uses = std::map<std::string, std::size_t>;

QStringList byUse(const std::vector<std::shared_ptr<const Uses>>& ofChunks) {
    Uses all;
    for (const auto& uses : ofChunks) {
        for (const auto& [word, count] : *uses) {
            all[word] += count;
        }
    }
    std::erase_if(all, [](const Uses::value_type& use) { return use.second == 0; });
    std::vector<std::pair<std::string, std::size_t>> sorted(all.begin(), all.end());
    std::ranges::stable_sort(sorted, std::greater(), &std::pair<std::string, std::size_t>::second);
    QStringList words;
    for (const auto& [word, count] : sorted) {
        words += QString::fromStdString(word);
    }
    return words;
}

QString timeText(units::Moment moment, const units::Clock& clock) {
    return QString::fromStdString(units::timeOfDayText(moment, clock));
}

} // namespace

StayRead readStay(const StayTyped& typed, const water::Water& water,
                  const std::vector<KnownPlace>& places) {
    StayRead read;
    const auto text = [&typed](StayLine line) {
        return typed.lines[static_cast<std::size_t>(line)].trimmed();
    };
    const bool isPointed = typed.pointed && typed.pointed->name == text(placeLine);
    const auto place =
        isPointed ? std::optional(typed.pointed->place) : placeMeant(text(placeLine), places);
    const auto day = units::dayWritten(text(dayLine).toStdString());
    const units::Moment midnight =
        day ? water.clock.at(*day, std::chrono::seconds(0)) : units::Moment();
    const auto start = momentTyped(text(fromLine), midnight, water.clock);
    auto end = momentTyped(text(toLine), start.value_or(midnight), water.clock);
    if (start && end && *end <= *start && units::timeWritten(text(toLine).toStdString())) {
        // By the clock and not 24 hours on: it may have been turned that night.
        const units::Day next{std::chrono::sys_days(water.clock.dayOf(*start)) +
                              std::chrono::days(1)};
        end = water.clock.at(next, *units::timeWritten(text(toLine).toStdString()));
    }
    const bool isInOrder = !start || !end || (*start < *end && *end - *start <= aDay);
    const auto rods = rodsTyped(text(rodsLine));
    read.isRight = {place.has_value(), start && day, end && isInOrder,
                    !rods || *rods,    true,         day.has_value()};
    if (place && day && start && end && isInOrder && (!rods || *rods)) {
        Stay stay;
        stay.start = *start;
        stay.end = *end;
        stay.place = *place;
        stay.rods = rods ? *rods : std::nullopt;
        stay.bait = text(baitLine).toStdString();
        const double hours = std::chrono::duration<double, std::ratio<3600>>(*end - *start).count();
        read.said = QStringLiteral("%1, %2").arg(wording::stayTitle(stay, water.clock),
                                                 Words::hours(hours));
        read.stay = std::move(stay);
    }
    return read;
}

StayOffered offeredOn(const water::Water& water, units::Day day) {
    const Stay* last = nullptr;
    for (const Stay& before : water.log | std::views::reverse) {
        const units::Day its = water.clock.dayOf(before.start);
        if (its < day) {
            break;
        }
        if (its == day) {
            last = &before;
            break;
        }
    }
    if (last == nullptr) {
        return {};
    }
    StayOffered offered;
    if (water.clock.dayOf(last->end) == day) {
        offered.from = timeText(last->end, water.clock);
    }
    if (last->rods) {
        const int allowed = water.houseRules.rodLimit.value_or(*last->rods);
        offered.rods = QString::number(std::min(*last->rods, allowed));
    }
    offered.bait = QString::fromStdString(last->bait);
    return offered;
}

FishRead readFish(const std::array<QString, fishLineCount>& lines, const Stay& stay, bool isLanded,
                  const units::Clock& clock, const Words& words) {
    FishRead read;
    const auto text = [&lines](FishLine line) {
        return lines[static_cast<std::size_t>(line)].trimmed();
    };
    const auto isWithin = [&stay](std::optional<units::Moment> moment) {
        return moment && *moment >= stay.start && *moment <= stay.end;
    };
    auto time = momentTyped(text(timeLine), stay.start, clock);
    if (!isWithin(time)) { // of a stay over midnight
        time = momentTyped(text(timeLine), stay.end, clock);
    }
    const auto weight = wording::fishWeightTyped(text(weightLine), words.units());
    const bool isTimeRight = isWithin(time) || text(timeLine).isEmpty(); // or nobody noted it
    read.isRight = {isTimeRight, true, weight || text(weightLine).isEmpty() || !isLanded};
    if (isTimeRight && read.isRight[weightLine]) {
        Fish fish;
        fish.time = time;
        fish.landed = isLanded;
        if (isLanded) {
            fish.species = text(speciesLine).toStdString();
            fish.weight = weight;
        }
        read.fish = std::move(fish);
    }
    return read;
}

QStringList speciesByUse(const logbook::KeptLog& log) {
    static base::MadeOfChunks<Stay, Uses> ofChunks;
    return byUse(ofChunks.of(log, [](std::span<const Stay> stays) {
        Uses uses;
        for (const Stay& stay : stays) {
            for (const Fish& run : stay.runs) {
                uses[run.species] += run.species.empty() ? 0 : 1;
            }
        }
        return uses;
    }));
}

QStringList baitsByUse(const logbook::KeptLog& log) {
    static base::MadeOfChunks<Stay, Uses> ofChunks;
    return byUse(ofChunks.of(log, [](std::span<const Stay> stays) {
        Uses uses;
        for (const Stay& stay : stays) {
            uses[stay.bait] += stay.bait.empty() ? 0 : 1;
        }
        return uses;
    }));
}

} // namespace days::looking_back

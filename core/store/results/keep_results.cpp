// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/results/keep_results.h"

#include "core/store/geopackage.h"
#include "core/store/results/result_members.h"
#include "core/store/statement.h"

#include <algorithm>
#include <bit>
#include <memory>
#include <utility>

namespace store {

using water::Derived;
using water::Stamp;
using water::Step;

namespace {

/// Raised with every change of what a result consists of. A file from a machine of another byte
/// order shows another number too.
constexpr std::uint32_t resultLayout = 1;

/// A larger result is quicker made again than the rest of such a file is read, and no value of a
/// file may be longer than 64 MiB.
constexpr std::size_t largestResult = std::size_t{48} << 20;

std::int64_t numberOf(Stamp stamp) {
    return std::bit_cast<std::int64_t>(stamp.value());
}

/// A disk that gives back other bytes than it was given is found out.
Stamp sumOf(std::span<const std::byte> bytes) {
    Stamp sum;
    for (; bytes.size() >= sizeof(std::uint64_t); bytes = bytes.subspan(sizeof(std::uint64_t))) {
        std::uint64_t word = 0;
        std::memcpy(&word, bytes.data(), sizeof word);
        sum.takeWord(word);
    }
    return sum.take(bytes);
}

/// What a result was made from: the water, and the very drawing. A water that is drawn afresh has
/// the same stamp and another bottom.
Stamp madeFrom(Stamp stamp, const surface::DrawnWater& drawn) {
    return stamp.take(sumOf(std::as_bytes(std::span(drawn.depth.raw_m()))));
}

template <class T>
std::optional<std::vector<std::byte>> bytesOf(const T& result, const grid::GridFrame& frame) {
    ResultWriter writer;
    writer.number(resultLayout);
    ResultMembers<ResultWriter>(writer, frame).take(result);
    return writer.isFine() ? std::optional(writer.bytes()) : std::nullopt;
}

template <class T>
std::shared_ptr<T> resultFrom(std::span<const std::byte> bytes, const grid::GridFrame& frame) {
    ResultReader reader(bytes);
    std::uint32_t layout = 0;
    reader.number(layout);
    if (layout != resultLayout) {
        return nullptr;
    }
    auto result = std::make_shared<T>();
    ResultMembers<ResultReader>(reader, frame).take(*result);
    return reader.isWhole() ? result : nullptr;
}

std::optional<std::vector<std::byte>> bytesOf(const Derived& found, Step step) {
    const grid::GridFrame& frame = found.drawn->depth.frame();
    if (step == Step::reduce && found.checked) {
        return bytesOf(*found.checked, frame);
    }
    if (step == Step::bands && found.form) {
        return bytesOf(*found.form, frame);
    }
    if (step == Step::structure && found.structure) {
        return bytesOf(*found.structure, frame);
    }
    if (step == Step::sections && found.sections) {
        return bytesOf(*found.sections, frame);
    }
    return std::nullopt;
}

/// Every cell belongs to something that is there.
template <class Number>
bool areAllThere(const grid::Grid<Number>& numbers, std::size_t count) {
    return std::ranges::all_of(numbers.values(), [count](Number number) {
        return number == -1 || (number >= 0 && static_cast<std::size_t>(number) < count);
    });
}

/// Whether it says something of each of the water's days, and of each of their soundings.
bool isOf(const water::CheckedSurvey& checked, const water::Water& water) {
    const auto& days = checked.survey.days;
    const reduction::DayTie& tie = checked.tie;
    for (const std::size_t many :
         {days.size(), tie.offsets.size(), tie.offsetErrors.size(), tie.isHeld.size(),
          tie.isTied.size(), tie.crossingsWithOthers.size(), checked.delays.size()}) {
        if (many != water.days.size()) {
            return false;
        }
    }
    for (const reduction::DayDifference& between : checked.differences) {
        if (std::max(between.dayA, between.dayB) >= days.size()) {
            return false;
        }
    }
    for (std::size_t i = 0; i < days.size(); ++i) {
        const std::size_t count = water.days[i].soundings.size();
        if (days[i].points.size() != count || days[i].depth_m.size() != count) {
            return false;
        }
    }
    return true;
}

/// Whether it lies between soundings, and survey days, that are there.
bool isThere(const reduction::Crossing& crossing, const water::CheckedSurvey& checked) {
    const auto days = static_cast<int>(checked.survey.days.size());
    return std::max(crossing.soundingA, crossing.soundingB) < checked.kept.size() &&
           std::min(crossing.dayA, crossing.dayB) >= 0 &&
           std::max(crossing.dayA, crossing.dayB) < days;
}

bool putReduced(std::span<const std::byte> bytes, const water::Water& water, Derived& derived) {
    const auto checked = resultFrom<water::CheckedSurvey>(bytes, derived.drawn->depth.frame());
    if (!checked || !isOf(*checked, water)) {
        return false;
    }
    checked->kept = reduction::keptSoundings(water.days, checked->survey);
    if (!std::ranges::all_of(checked->crossings, [&](const reduction::Crossing& crossing) {
            return isThere(crossing, *checked);
        })) {
        return false;
    }
    derived.checked = checked;
    return true;
}

bool put(Step step, std::span<const std::byte> bytes, const water::Water& water, Derived& derived) {
    const grid::GridFrame& frame = derived.drawn->depth.frame();
    switch (step) {
    case Step::reduce:
        return putReduced(bytes, water, derived);
    case Step::bands:
        derived.form = resultFrom<water::WaterForm>(bytes, frame);
        return derived.form != nullptr;
    case Step::structure:
        if (const auto zones = resultFrom<structure::ZoneMap>(bytes, frame);
            zones && areAllThere(zones->zoneOfCell, zones->zones.size())) {
            derived.structure = zones;
            return true;
        }
        return false;
    case Step::sections:
        if (const auto map = resultFrom<sections::SectionMap>(bytes, frame);
            map && areAllThere(map->sectionOfCell, map->sections.size())) {
            derived.sections = map;
            return true;
        }
        return false;
    default:
        return false;
    }
}

/// The stamp and the sum of what the file holds of the step. One that makes no sense is none: what
/// can be made again is no reason to refuse a water.
std::optional<std::pair<std::int64_t, std::int64_t>> heldOf(Connection& connection, Step step) {
    Statement held(connection, "SELECT stamp, content_sum FROM step_results WHERE step=? AND "
                               "typeof(stamp)='integer' AND typeof(content_sum)='integer'");
    held.ask(water::nameOf(step));
    return held.next() ? std::optional(std::pair(held.wholeNumber(0), held.wholeNumber(1)))
                       : std::nullopt;
}

void keepResult(Connection& connection, const Derived& found, Step step) {
    const auto stamp = found.stamps.find(step);
    const bool isMade = stamp != found.stamps.end() && found.drawn && !found.outlineIsAssumed;
    auto bytes = isMade ? bytesOf(found, step) : std::nullopt;
    if (bytes && bytes->size() > largestResult) {
        bytes.reset();
    }
    const auto wanted =
        bytes ? std::optional(std::pair(numberOf(madeFrom(stamp->second, *found.drawn)),
                                        numberOf(sumOf(*bytes))))
              : std::nullopt;
    // Divided anew, the same water gives other sections: the stamp alone does not tell.
    const auto held = heldOf(connection, step);
    if (held == wanted) {
        return;
    }
    Statement(connection, "DELETE FROM step_results WHERE step=?").run(water::nameOf(step));
    if (wanted) {
        Statement(connection,
                  "INSERT INTO step_results (step, stamp, content_sum, content) VALUES (?,?,?,?)")
            .run(water::nameOf(step), wanted->first, wanted->second, Blob(*bytes));
    }
    setChanged(connection, "step_results");
}

} // namespace

void keepResults(Connection& connection, const Derived& found) {
    for (const Step step : keptSteps) {
        keepResult(connection, found, step);
    }
}

void recallResults(Connection& connection, const water::Water& water, const water::Stamps& wanted,
                   std::span<const Step> steps, Derived& derived) {
    if (!derived.drawn || !derived.outline ||
        !derived.isCurrent(Step::draw, wanted.at(Step::draw))) {
        return;
    }
    Statement row(connection, "SELECT content_sum, content FROM step_results "
                              "WHERE step=? AND stamp=? AND typeof(content_sum)='integer' AND "
                              "typeof(content)='blob'");
    for (const Step step : steps) {
        row.ask(water::nameOf(step), numberOf(madeFrom(wanted.at(step), *derived.drawn)));
        if (row.next() && row.wholeNumber(0) == numberOf(sumOf(row.blob(1))) &&
            put(step, row.blob(1), water, derived)) {
            derived.stamps[step] = wanted.at(step);
        }
        row.reset();
    }
}

} // namespace store

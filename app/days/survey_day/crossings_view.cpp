// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/crossings_view.h"

#include "app/wording/section_words.h"
#include "app/wording/tongue.h"

#include <QDate>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace days::survey_day {

namespace {

using reduction::Crossing;
using wording::Words;

std::vector<QStringList> summaryOf(const reduction::CrossingCheck& check, const Words& words) {
    if (check.count == 0) {
        return {};
    }
    return {{wording::Tongue::tr("crossings"), Words::count(check.count)},
            {wording::Tongue::tr("mean difference, later less earlier"),
             words.levelChange(units::Length::metres(check.mean_m))},
            {wording::Tongue::tr("root mean square difference"),
             words.fineDepth(units::Depth::metres(check.rms_m))},
            {wording::Tongue::tr("95 of 100 within"),
             words.fineDepth(units::Depth::metres(check.p95_m))},
            {wording::Tongue::tr("within IHO S-44 order 1b"), Words::share(check.withinOrder1b)},
            {wording::Tongue::tr("within IHO S-44 order 2"), Words::share(check.withinOrder2)}};
}

/// Positions of the crossings that differ most, the worst first.
std::vector<std::size_t> worstOf(const std::vector<Crossing>& crossings, std::size_t most) {
    std::vector<std::size_t> order(crossings.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    const auto end = order.begin() + static_cast<std::ptrdiff_t>(std::min(most, order.size()));
    std::partial_sort(order.begin(), end, order.end(), [&](std::size_t a, std::size_t b) {
        const double apartA = std::abs(crossings[a].difference_m());
        const double apartB = std::abs(crossings[b].difference_m());
        return apartA != apartB ? apartA > apartB : a < b;
    });
    order.erase(end, order.end());
    return order;
}

/// Days are mostly named by their date: "2026-09-05" becomes "5 Sep".
QString shortName(const std::vector<soundings::SurveyDay>& days, int day) {
    const auto position = static_cast<std::size_t>(day);
    if (day < 0 || position >= days.size()) {
        return {};
    }
    const QString name = QString::fromStdString(days[position].name);
    const QDate date = QDate::fromString(name, Qt::ISODate);
    return date.isValid() ? wording::Tongue::locale().toString(date, wording::Tongue::tr("d MMM"))
                          : name;
}

QString daysOf(const ViewInput& input, const Crossing& crossing) {
    const QString earlier = shortName(input.water.days, crossing.dayA);
    return crossing.dayA == crossing.dayB
               ? earlier
               : QStringLiteral("%1, %2").arg(earlier, shortName(input.water.days, crossing.dayB));
}

QString coordinates(const ViewInput& input, geo::WaterPoint at) {
    return input.water.frame ? Words::place(input.water.frame->toEarth(at)) : QString();
}

/// The section that it lies in; else its place on the Earth.
QString whereabouts(const ViewInput& input, geo::WaterPoint at) {
    if (const auto& map = input.derived.sections) {
        const grid::Cell cell = map->sectionOfCell.frame().cellOf(at);
        if (map->sectionOfCell.frame().holds(cell) && map->sectionOfCell[cell] >= 0) {
            const auto section = static_cast<std::size_t>(map->sectionOfCell[cell]);
            if (section < map->sections.size()) {
                return wording::nameCalled(map->sections[section].name);
            }
        }
    }
    return coordinates(input, at);
}

} // namespace

std::optional<int> CrossingsView::rowOf(std::size_t crossing) const {
    const auto row = std::ranges::find(crossings, crossing);
    return row == crossings.end() ? std::nullopt
                                  : std::optional(static_cast<int>(row - crossings.begin()));
}

CrossingsView crossingsViewOf(const ViewInput& input, std::size_t rows) {
    CrossingsView view;
    const auto& checked = input.derived.checked;
    if (!checked) {
        return view;
    }
    view.summary = summaryOf(checked->check, input.words);
    view.crossings = worstOf(checked->crossings, rows);
    for (const std::size_t position : view.crossings) {
        const Crossing& crossing = checked->crossings[position];
        view.worst.push_back(
            {whereabouts(input, crossing.at), daysOf(input, crossing),
             input.words.levelChange(units::Length::metres(crossing.difference_m()))});
    }
    return view;
}

QString crossingWords(const ViewInput& input, std::size_t crossing) {
    const auto& checked = input.derived.checked;
    if (!checked || crossing >= checked->crossings.size()) {
        return {};
    }
    const Crossing& at = checked->crossings[crossing];
    const auto depth = [&](double depth_m) {
        return input.words.fineDepth(units::Depth::metres(depth_m));
    };
    return wording::Tongue::tr("%1 on the earlier pass, %2 on the later (%3), at %4")
        .arg(depth(at.depthA_m), depth(at.depthB_m), daysOf(input, at), coordinates(input, at.at));
}

} // namespace days::survey_day

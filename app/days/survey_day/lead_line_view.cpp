// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/lead_line_view.h"

#include "app/wording/tongue.h"

#include <array>

namespace days::survey_day {

namespace {

using soundings::Bottom;

constexpr std::array bottoms{Bottom::soft, Bottom::gravel, Bottom::rock, Bottom::weed};

QString nameOf(std::optional<Bottom> bottom) {
    return bottomNames().at(rowOf(bottom));
}

} // namespace

QStringList bottomNames() {
    QStringList names{wording::Tongue::tr("not felt")};
    for (const Bottom bottom : bottoms) {
        const auto name = soundings::nameOf(bottom);
        names.push_back(wording::Tongue::ofCore(std::string(name)));
    }
    return names;
}

std::optional<Bottom> bottomAt(int row) {
    return row >= 1 && row <= static_cast<int>(bottoms.size())
               ? std::optional(bottoms.at(static_cast<std::size_t>(row - 1)))
               : std::nullopt;
}

int rowOf(std::optional<Bottom> bottom) {
    return bottom ? static_cast<int>(*bottom) + 1 : 0;
}

LeadLineView leadLineViewOf(const ViewInput& input) {
    LeadLineView view;
    for (const soundings::LeadLineSounding& one : input.water.leadLine) {
        view.rows.push_back({input.words.depth(one.depth),
                             one.bottom ? nameOf(one.bottom) : QString(),
                             wording::Words::place(one.place)});
    }
    view.about =
        wording::Tongue::tr("Depths count from chart level (%1 on the gauge). Type the level of "
                            "the day beside a depth read today, and it is allowed for.")
            .arg(input.words.levelChange(input.water.chartLevel - units::WaterLevel()));
    return view;
}

units::Depth belowChartLevel(units::Depth shown, std::optional<units::WaterLevel> level,
                             units::WaterLevel chartLevel) {
    return level ? shown - units::Depth::fromLength(*level - chartLevel) : shown;
}

} // namespace days::survey_day

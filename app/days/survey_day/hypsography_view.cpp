// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/hypsography_view.h"

#include "app/chart/todays_form.h"
#include "app/wording/tongue.h"

#include <algorithm>
#include <array>

namespace days::survey_day {

namespace {

using surface::Hypsography;
using surface::HypsographyStep;
using wording::Words;

constexpr double mostRows = 30.0;
constexpr double mostTicks = 6.0;
constexpr std::size_t curvePoints = 200;

/// The finest round step of the user's unit of which fewer than `most` reach down to the deepest.
double stepFor(const Words& words, units::Depth deepest, double most) {
    static constexpr std::array steps{0.1, 0.25, 0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0};
    return *std::find_if(steps.begin(), steps.end() - 1,
                         [&](double step) { return words.depthAmount(deepest) / step < most; });
}

QString depthText(const Words& words, units::Depth depth) {
    return words.shortDepthNumber(depth);
}

HypsographyView::Curve curveOf(const Hypsography& form, const Words& words, bool isVolume) {
    HypsographyView::Curve curve;
    if (form.steps.empty()) {
        return curve;
    }
    const units::Length apart =
        units::Length::metres(form.maxDepth.inMetres() / static_cast<double>(curvePoints));
    for (const HypsographyStep& row : surface::rowsEvery(form, apart)) {
        curve.emplace_back(isVolume ? words.volumeAmount(row.below) : words.areaAmount(row.area),
                           words.depthAmount(row.depth));
    }
    return curve;
}

void addRows(HypsographyView& view, const Hypsography& chart, const Hypsography& today,
             const Words& words, bool areBoth) {
    const units::Depth deepest = std::max(chart.maxDepth, today.maxDepth);
    const double amount = stepFor(words, deepest, mostRows);
    const units::Length step =
        words.isMetric() ? units::Length::metres(amount) : units::Length::feet(amount);
    view.depthTick = stepFor(words, deepest, mostTicks);
    const auto chartRows = surface::rowsEvery(chart, step);
    const auto todayRows = surface::rowsEvery(today, step);
    const std::size_t count =
        areBoth ? std::max(chartRows.size(), todayRows.size()) : chartRows.size();
    for (std::size_t k = 0; k < count; ++k) {
        const units::Depth depth = k < chartRows.size() ? chartRows[k].depth : todayRows[k].depth;
        const HypsographyStep at = surface::stepAt(chart, depth);
        QStringList row{depthText(words, depth), words.areaNumber(at.area),
                        words.volumeNumber(at.below)};
        if (areBoth) {
            const HypsographyStep now = surface::stepAt(today, depth);
            row << words.areaNumber(now.area) << words.volumeNumber(now.below);
        }
        view.rows.push_back(std::move(row));
    }
}

} // namespace

QString HypsographyView::asText() const {
    QString text = columns.join('\t') + '\n';
    for (const QStringList& row : rows) {
        text += row.join('\t') + '\n';
    }
    return text;
}

HypsographyView hypsographyViewOf(const ViewInput& input) {
    HypsographyView view;
    if (!input.derived.form) {
        return view;
    }
    const Words& words = input.words;
    const water::WaterForm& chart = *input.derived.form;
    const water::WaterForm& today = *chart::formOf(input.derived);
    const bool areBoth = today.rise != chart.rise;
    view.columns = {wording::Tongue::tr("Depth, %1").arg(words.depthUnit()),
                    wording::Tongue::tr("Area, %1").arg(words.areaUnit()),
                    wording::Tongue::tr("Volume, %1").arg(words.volumeUnit())};
    view.heads = view.columns;
    view.about = wording::Tongue::tr("Area as deep as that or deeper, and volume below that depth, "
                                     "at chart level.");
    if (areBoth) {
        view.columns << wording::Tongue::tr("Area today, %1").arg(words.areaUnit())
                     << wording::Tongue::tr("Volume today, %1").arg(words.volumeUnit());
        view.heads = {view.columns.front(), words.areaUnit(), words.volumeUnit(),
                      wording::Tongue::tr("today %1").arg(words.areaUnit()), words.volumeUnit()};
        view.about =
            wording::Tongue::tr("Area as deep as that or deeper, and volume below that depth: "
                                "at chart level (dashed), and today at %1 from it (drawn "
                                "through).")
                .arg(words.levelChange(today.rise));
        view.chartArea = curveOf(chart.hypsography, words, false);
        view.chartVolume = curveOf(chart.hypsography, words, true);
    }
    addRows(view, chart.hypsography, today.hypsography, words, areBoth);
    view.area = curveOf(today.hypsography, words, false);
    view.volume = curveOf(today.hypsography, words, true);
    view.depthTitle = wording::Tongue::tr("depth, %1").arg(words.depthUnit());
    view.areaTitle = wording::Tongue::tr("area, %1").arg(words.areaUnit());
    view.volumeTitle = wording::Tongue::tr("volume, %1").arg(words.volumeUnit());
    return view;
}

} // namespace days::survey_day

// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/drawing_view.h"

namespace days::survey_day {

namespace {

using wording::Words;

std::vector<QStringList> formRows(const surface::Hypsography& form, const Words& words) {
    return {
        {QStringLiteral("area"), words.area(form.area)},
        {QStringLiteral("volume"), words.volume(form.volume)},
        {QStringLiteral("mean depth"), words.depth(form.meanDepth)},
        {QStringLiteral("greatest depth"), words.depth(form.maxDepth)},
        {QStringLiteral("bank, islands included"), words.length(form.shoreLength)},
        {QStringLiteral("shoreline development"), QString::number(form.shoreDevelopment, 'f', 2)}};
}

std::vector<QStringList> howRows(const surface::DrawReport& report, const Words& words) {
    std::vector<QStringList> rows{
        {QStringLiteral("cells"),
         QStringLiteral("%1 of %2").arg(Words::count(report.cells), words.length(report.cell))},
        {QStringLiteral("soundings used"), Words::count(report.soundingsUsed)},
        {QStringLiteral("left out as spikes"), Words::count(report.spikes.size())}};
    if (report.heldOut) {
        rows.push_back({QStringLiteral("off where held out (median)"),
                        words.fineDepth(units::Depth::metres(report.heldOut->median_m))});
    }
    rows.push_back({QStringLiteral("stiffness, along contours"),
                    QStringLiteral("%1, %2")
                        .arg(report.stiffness, 0, 'f', 0)
                        .arg(report.contourStiffness, 0, 'f', 0)});
    return rows;
}

QString stateOf(const surface::DrawReport& report, const Words& words) {
    const QString cells = QStringLiteral("cells of %1").arg(words.length(report.cell));
    return report.heldOut
               ? QStringLiteral("%1, off by %2")
                     .arg(cells, words.fineDepth(units::Depth::metres(report.heldOut->median_m)))
               : cells;
}

} // namespace

DrawingView drawingViewOf(const ViewInput& input) {
    DrawingView view;
    view.isStale = input.isStale(water::Step::draw);
    view.canDraw = !input.water.days.empty() || !input.water.leadLine.empty();
    if (input.water.settings.cell) {
        view.cell = input.words.length(*input.water.settings.cell);
    }
    for (const std::string& note : input.derived.notes) {
        view.notes.push_back(QString::fromStdString(note));
    }
    const auto& drawn = input.derived.drawn;
    if (!drawn) {
        view.state = QStringLiteral("not drawn yet");
        return view;
    }
    view.state = stateOf(drawn->report, input.words);
    view.how = howRows(drawn->report, input.words);
    using surface::TrustName;
    view.trustShare = {drawn->trust.shareOf(TrustName::sounded),
                       drawn->trust.shareOf(TrustName::inferred),
                       drawn->trust.shareOf(TrustName::guess)};
    view.trust = QStringLiteral("%1 sounded, %2 inferred, %3 a guess")
                     .arg(Words::share(view.trustShare[0]), Words::share(view.trustShare[1]),
                          Words::share(view.trustShare[2]));
    if (input.derived.form) {
        view.form = formRows(input.derived.form->hypsography, input.words);
    }
    return view;
}

} // namespace days::survey_day

// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/weed_view.h"

#include "core/geo/path.h"

#include <cmath>

namespace days::survey_day {

namespace {

QString growthWords(const weed::WeedMap& map, const wording::Words& words) {
    if (!map.growthLimit) {
        return QStringLiteral("Without a Secchi depth the map rests on the notes and on what is "
                              "usual.");
    }
    QString text = QStringLiteral("Weed grows down to about %1").arg(words.depth(*map.growthLimit));
    if (map.growthLimitLow && map.growthLimitHigh) {
        text += QStringLiteral(" (published relations: %1)")
                    .arg(words.depthRange(*map.growthLimitLow, *map.growthLimitHigh));
    }
    return text + '.';
}

/// "55.20341 N 3.11272 E", "120 m of line", "1.2 ha".
QString whereOf(const weed::WeedNote& note, const ViewInput& input) {
    if (note.extent == weed::Extent::place || !input.water.frame) {
        return wording::Words::place(note.place);
    }
    const auto corners = input.water.frame->toWater(std::span(note.corners));
    if (note.extent == weed::Extent::line) {
        return QStringLiteral("%1 of line").arg(input.words.length(geo::lengthOf(corners)));
    }
    return QStringLiteral("%1 round %2")
        .arg(input.words.area(units::Area::squareMetres(std::abs(geo::signedArea_m2(corners)))),
             wording::Words::place(note.place));
}

/// What of the notes does not count, or not in full.
QString countingWords(const weed::WeedMap& map) {
    QString text;
    if (map.notesOutside > 0) {
        text += QStringLiteral(" %1 notes lie outside the water and do not count.")
                    .arg(map.notesOutside);
    }
    if (map.notesFaded > 0) {
        text += QStringLiteral(" %1 of %2 are of earlier years: each counts half for every year.")
                    .arg(map.notesFaded)
                    .arg(map.notesUsed);
    }
    return text;
}

} // namespace

WeedView weedViewOf(const ViewInput& input) {
    WeedView view;
    view.weedLeft = input.water.settings.weedLeft;
    if (input.water.settings.secchi) {
        view.secchi = input.words.depth(*input.water.settings.secchi);
    }
    for (const weed::WeedNote& note : input.water.weedNotes) {
        const auto growth = weed::nameOf(note.growth);
        view.notes.push_back(
            {QString::fromUtf8(growth.data(), static_cast<qsizetype>(growth.size())),
             note.height && note.growth != weed::Growth::none
                 ? input.words.depth(units::Depth::fromLength(*note.height))
                 : QString(),
             note.seen ? wording::Words::day(*note.seen) : QString(), whereOf(note, input)});
    }
    const std::size_t notes = view.notes.size();
    view.state = notes == 0 ? QStringLiteral("no notes")
                            : QStringLiteral("%1 %2").arg(notes).arg(
                                  notes == 1 ? QStringLiteral("note") : QStringLiteral("notes"));
    if (const auto& map = input.derived.weed) {
        view.growth = growthWords(*map, input.words);
        if (map->growthLimit) {
            view.state += QStringLiteral(", weed to %1").arg(input.words.depth(*map->growthLimit));
        }
        view.growth += countingWords(*map);
    }
    return view;
}

} // namespace days::survey_day

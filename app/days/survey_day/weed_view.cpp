// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/weed_view.h"

#include "app/wording/counted_words.h"
#include "app/wording/tongue.h"
#include "core/geo/path.h"

#include <cmath>

namespace days::survey_day {

namespace {

QString growthWords(const weed::WeedMap& map, const wording::Words& words) {
    if (!map.growthLimit) {
        return wording::Tongue::tr(
            "Without a Secchi depth the map rests on the notes and on what is "
            "usual.");
    }
    QString text =
        wording::Tongue::tr("Weed grows down to about %1").arg(words.depth(*map.growthLimit));
    if (map.growthLimitLow && map.growthLimitHigh) {
        text += wording::Tongue::tr(" (published relations: %1)")
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
        return wording::Tongue::tr("%1 of line").arg(input.words.length(geo::lengthOf(corners)));
    }
    return wording::Tongue::tr("%1 round %2")
        .arg(input.words.area(units::Area::squareMetres(std::abs(geo::signedArea_m2(corners)))),
             wording::Words::place(note.place));
}

/// What of the notes does not count, or not in full.
QString countingWords(const weed::WeedMap& map) {
    QString text;
    if (map.notesOutside > 0) {
        text += ' ' + wording::Tongue::counted("%n notes lie outside the water and do not count.",
                                               "%n note lies outside the water and does not count.",
                                               map.notesOutside);
    }
    if (map.notesFaded > 0) {
        text += ' ' + wording::Tongue::counted(
                          "%n notes are of earlier years and count half for every year.",
                          "%n note is of an earlier year and counts half for every year.",
                          map.notesFaded);
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
        view.notes.push_back({wording::Tongue::ofCore(std::string(growth)),
                              note.height && note.growth != weed::Growth::none
                                  ? input.words.depth(units::Depth::fromLength(*note.height))
                                  : QString(),
                              note.seen ? wording::Words::day(*note.seen) : QString(),
                              whereOf(note, input)});
    }
    const std::size_t notes = view.notes.size();
    view.state = notes == 0 ? wording::Tongue::tr("no notes")
                            : wording::notesCounted(static_cast<qint64>(notes));
    if (const auto& map = input.derived.weed) {
        view.growth = growthWords(*map, input.words);
        if (map->growthLimit) {
            view.state +=
                wording::Tongue::tr(", weed to %1").arg(input.words.depth(*map->growthLimit));
        }
        view.growth += countingWords(*map);
    }
    return view;
}

} // namespace days::survey_day

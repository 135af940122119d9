// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/weed_view.h"

#include "app/wording/counted_words.h"
#include "app/wording/tongue.h"

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
                              wording::Words::place(note.place)});
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
        if (map->notesOutside > 0) {
            view.growth +=
                ' ' + wording::Tongue::counted("%n notes lie outside the water and do not count.",
                                               "%n note lies outside the water and does not count.",
                                               map->notesOutside);
        }
    }
    return view;
}

} // namespace days::survey_day

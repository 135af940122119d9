// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/shoreline_view.h"

#include "app/wording/counted_words.h"
#include "app/wording/tongue.h"

#include <algorithm>

namespace days::survey_day {

namespace {

QString islandsIn(const geo::Outline& outline) {
    std::size_t islands = 0;
    for (const geo::Piece& piece : outline.pieces()) {
        islands += piece.islands.size();
    }
    return wording::islandsCounted(static_cast<qint64>(islands));
}

} // namespace

ShorelineView shorelineViewOf(const ViewInput& input) {
    ShorelineView view;
    view.hasShore = !input.water.shoreline.empty();
    view.hasIslands =
        std::any_of(input.water.shoreline.begin(), input.water.shoreline.end(),
                    [](const geo::LonLatPiece& piece) { return !piece.islands.empty(); });
    view.canTrace = input.water.frame.has_value();
    view.chartLevel = input.words.levelChange(input.water.chartLevel - units::WaterLevel());
    if (input.water.plan.launch) {
        view.launch = wording::Words::place(*input.water.plan.launch);
    }
    const auto& outline = input.derived.outline;
    if (!view.hasShore) {
        view.state = outline ? wording::Tongue::tr("assumed round the soundings")
                             : wording::Tongue::tr("none yet");
        view.facts = wording::Tongue::tr("No shoreline yet. Until there is one, a line round the "
                                         "soundings stands for it, and depths near the bank are a "
                                         "guess.");
        return view;
    }
    if (!outline || input.derived.outlineIsAssumed) {
        view.state = wording::Tongue::tr("brought in");
        return view;
    }
    view.state =
        QStringLiteral("%1, %2").arg(input.words.area(outline->area()), islandsIn(*outline));
    view.facts = wording::Tongue::tr("%1 of water, %2, %3 of bank.")
                     .arg(input.words.area(outline->area()), islandsIn(*outline),
                          input.words.length(outline->shoreLength()));
    return view;
}

} // namespace days::survey_day

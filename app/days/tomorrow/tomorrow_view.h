// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/words.h"
#include "core/geo/water_frame.h"
#include "core/logbook/house_rules.h"
#include "core/water/document/planned_day.h"
#include "core/water/document/water.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

// What the steps of tomorrow show, worked out without any widget.
namespace days::tomorrow {

/// "Fri 27 Nov 2026, 07:40 to 15:30, WNW 300° 6 m/s".
[[nodiscard]] QString conditionsLine(const marks::ExpectedDay& day, const wording::Words& words);
/// Whether the water's clock is the right one, where the sun over it is far from what it says;
/// empty where it is not, or nobody knows where the water lies.
[[nodiscard]] QString clockQuestion(const water::Water& water);
/// "Force 4, moderate breeze: ..." with what it looks like.
[[nodiscard]] QString beaufortWords(units::Speed wind);
/// "07:40".
[[nodiscard]] QString timeOfDay(std::chrono::seconds sinceMidnight);

/// Rods that may be used: those wanted, held to the house rules.
[[nodiscard]] int rodsAllowed(const marks::Tackle& tackle, const logbook::HouseRules& rules);
[[nodiscard]] QString tackleLine(const marks::Tackle& tackle, const logbook::HouseRules& rules,
                                 const wording::Words& words);
/// What the fishery says on rods; empty where it says nothing.
[[nodiscard]] QString rodLimitWords(const marks::Tackle& tackle, const logbook::HouseRules& rules);

/// "depth in your bands".
[[nodiscard]] QString factorTitle(marks::FactorKind kind);
/// What it means, in a sentence.
[[nodiscard]] QString factorMeaning(marks::FactorKind kind);
/// "Drop-off in reach. You count it as usual; your log speaks for it: ..."
[[nodiscard]] QString beliefRow(const marks::BeliefRecord& record, bool hasLog);
/// What its slider is called: for windward and shelter what a liking for ripple or calm says.
[[nodiscard]] QString weightTitle(marks::FactorKind kind);
/// "You like waves of about 0.10 m best."
[[nodiscard]] QString likedWavesWords(const marks::Weights& weights, const wording::Words& words);
/// The three that weigh most: "depth, drop-off, record".
[[nodiscard]] QString weightsLine(const marks::Weights& weights);

/// "Owl Point", "Gannick Bar, 120 m NE", the section's name, or "Mark 3".
[[nodiscard]] QString markTitle(const marks::Mark& mark, const wording::Words& words);
/// Whether a reason changes what is expected by a twentieth or more.
[[nodiscard]] bool isWorthTelling(const marks::Factor& factor);
/// "2.2  ×1.40": fish in 10 rod-hours where the log lets expect any, and times the water's mean.
[[nodiscard]] QString scoreWords(const marks::Mark& mark);
/// The same in a sentence, with the interval, and whether the mark is there to learn from.
[[nodiscard]] QString expectedWords(const marks::Mark& mark);
/// Rank and title, depth with its trust, score; best first.
[[nodiscard]] std::vector<QStringList> markRows(const water::PlannedDay& day,
                                                const wording::Words& words);
/// The reasons worth telling, that which changes most what is expected first.
[[nodiscard]] std::vector<marks::Factor> weighty(const marks::Mark& mark);
/// What is behind the reasons that matter to the user and hardly change what is expected here.
[[nodiscard]] QStringList furtherReasons(const marks::Mark& mark, const wording::Words& words);
/// "Bow", depth, rope, place.
[[nodiscard]] std::vector<QStringList> anchorRows(const marks::Mark& mark,
                                                  const std::optional<geo::WaterFrame>& frame,
                                                  const wording::Words& words);
/// "mark 3: bow 21 m, stern 9.3 m", or "mark 3: one anchor, 21 m", and whether it is laid by hand.
[[nodiscard]] QString ropesLine(const marks::Mark& mark, const wording::Words& words);
/// How to lie there: heading, rope to fall back on.
[[nodiscard]] QString lieWords(const marks::Mark& mark, const wording::Words& words);
/// Number and what is under it, bearing, distance, depth, stop knot.
[[nodiscard]] std::vector<QStringList> rodRows(const marks::Mark& mark,
                                               const wording::Words& words);

/// Mark, arrive, leave, stay, move; in the order of the day.
[[nodiscard]] std::vector<QStringList>
dayRows(const water::PlannedDay& day, const units::Clock& clock, const wording::Words& words);
/// "5 marks, 7 h 10, 2.9 km".
[[nodiscard]] QString dayLine(const water::PlannedDay& day, const wording::Words& words);
[[nodiscard]] QString lightWords(const light::SunTimes& light, const units::Clock& clock);

} // namespace days::tomorrow

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/looking_back/known_places.h"
#include "core/logbook/stay.h"

#include <array>

// What is typed of a stay or a fish before it is written down, read without any widget.
namespace days::looking_back {

/// The lines of a stay, in the order in which they are typed.
enum StayLine : int { placeLine, fromLine, toLine, rodsLine, baitLine, dayLine, stayLineCount };

/// What stands in the lines.
struct StayTyped {
    std::array<QString, stayLineCount> lines;
    /// Where somebody pointed at; stands for the place as long as its line says just this.
    std::optional<KnownPlace> pointed;
};

/// What it comes to. What nobody typed is not known; nothing is made up.
struct StayRead {
    std::array<bool, stayLineCount> isRight{};
    std::optional<logbook::Stay> stay; ///< Once place, day and both times are there.
    QString said;                      ///< "Sat 3 Oct 2026, 22:10 to 01:00, 2 h 50".
};
[[nodiscard]] StayRead readStay(const StayTyped& typed, const water::Water& water,
                                const std::vector<KnownPlace>& places);

/// What a stay after the others of `day` may have in common with the last of them: it began when
/// that one ended, with its rods, as far as the house allows them, and its bait. Empty where it is
/// the first.
struct StayOffered {
    QString from;
    QString rods;
    QString bait;
};
[[nodiscard]] StayOffered offeredOn(const water::Water& water, units::Day day);

/// The lines of a fish; of a lost run there is but the time.
enum FishLine : int { timeLine, speciesLine, weightLine, fishLineCount };

struct FishRead {
    std::array<bool, fishLineCount> isRight{};
    std::optional<logbook::Fish> fish; ///< Once its time is there, which lies within the stay.
};
[[nodiscard]] FishRead readFish(const std::array<QString, fishLineCount>& lines,
                                const logbook::Stay& stay, bool isLanded, const units::Clock& clock,
                                const wording::Words& words);

// Of the log asked about last only what has changed since is looked through again. For the window's
// thread alone.

/// Every species of the log, the one met most often first.
[[nodiscard]] QStringList speciesByUse(const logbook::KeptLog& log);
/// Every bait of the log, the one used most often first.
[[nodiscard]] QStringList baitsByUse(const logbook::KeptLog& log);

} // namespace days::looking_back

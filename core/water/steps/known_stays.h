// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/water/document/water.h"

#include <map>
#include <optional>

namespace water {

/// How a stay stands to those that a log holds. One boat is in one place at a time, so a stay is
/// known by when and where it was, and not by what is noted of it.
struct StayStanding {
    enum class Is {
        fresh,    ///< Nothing is there at its time.
        known,    ///< One at its time and place is there, which says all that it says.
        update,   ///< One at its time and place is there, and it says more of it, or otherwise.
        doubtful, ///< One is there at its time, elsewhere or only partly: one of the two is wrong.
    };
    Is is = Is::fresh;
    std::optional<logbook::StayId> of; ///< The stay of the log that it meets.
};

/// What two stays of different anglers at one place and time are. Two boats at different places are
/// two stays in any case.
enum class OtherAngler {
    ask,          ///< A question: did they fish with rods of their own, or is it one stay?
    separateRods, ///< Two stays, whose effort counts for both.
    sameRods,     ///< One stay of both: its effort counts once.
};

/// How stays of somebody else are taken.
struct Sharing {
    OtherAngler other = OtherAngler::ask;
    /// Of whom the log says nothing is not who the stay names: in a partner's log. Otherwise a stay
    /// that names somebody says more of the same one.
    bool isUnnamedOther = false;
};

/// The stays that a log holds, to be asked about one more. Two stays are one where they lie within
/// a cast and one overlaps the other by at least half of the shorter; overlaps of up to 15 minutes
/// are taken for times noted roughly (our choice, no source). A stay of over 24 hours meets none.
class KnownStays {
public:
    explicit KnownStays(const Water& water, Sharing sharing = {});
    KnownStays(const KnownStays&) = delete;
    KnownStays& operator=(const KnownStays&) = delete;
    KnownStays(KnownStays&&) = delete;
    KnownStays& operator=(KnownStays&&) = delete;
    ~KnownStays() = default;

    [[nodiscard]] StayStanding standingOf(const logbook::Stay& stay) const;
    /// One more, or another in the place of the one with its id, which it has to have.
    void take(const logbook::Stay& stay);
    /// As the log or the last take() has it; null where there is none.
    [[nodiscard]] const logbook::Stay* find(logbook::StayId id) const;

private:
    [[nodiscard]] bool isNear(geo::LonLat a, geo::LonLat b) const;
    /// \return true where `one` decides it.
    [[nodiscard]] bool meet(const logbook::Stay& one, const logbook::Stay& stay,
                            StayStanding& standing) const;

    using Taken = std::multimap<units::Moment, logbook::Stay>;

    logbook::KeptLog log_; ///< In order.
    Taken taken_;
    std::map<logbook::StayId, Taken::iterator> takenById_;
    std::map<logbook::StayId, logbook::Stay> replaced_; ///< Stays of the log, as they are now.
    std::optional<geo::WaterFrame> frame_;
    units::Length cast_;
    Sharing sharing_;
};

/// `known` with what `more` says of the same stay: what `more` says goes before what was noted
/// earlier, what it leaves open stays, and a fish of one minute is one fish. Where somebody else
/// fished, the stay is of both, the rods that were noted stay, and each fish is told whose it is.
/// Ids stay; a fish that is new has none.
[[nodiscard]] logbook::Stay updatedBy(logbook::Stay known, const logbook::Stay& more);

} // namespace water

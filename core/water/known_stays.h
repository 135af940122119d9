// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/logbook/trip.h"

#include <map>
#include <vector>

namespace water {

/// Which stays a log holds already, whatever their ids and those of their fish. Points into the
/// log, which has to stand unchanged meanwhile.
class KnownStays {
public:
    explicit KnownStays(const logbook::Log& log);
    /// One more, beside those of the log.
    void take(const logbook::Stay& stay);
    [[nodiscard]] bool holds(const logbook::Stay& stay) const;

private:
    std::vector<const logbook::Stay*> byStart_;
    std::multimap<units::Moment, logbook::Stay> taken_;
};

} // namespace water

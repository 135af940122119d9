// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/logbook/kept_log.h"

#include <map>

namespace water {

/// Which stays a log holds already, whatever their ids and those of their fish.
class KnownStays {
public:
    explicit KnownStays(logbook::KeptLog log);
    /// One more, beside those of the log.
    void take(const logbook::Stay& stay);
    [[nodiscard]] bool holds(const logbook::Stay& stay) const;

private:
    logbook::KeptLog log_; ///< In order.
    std::multimap<units::Moment, logbook::Stay> taken_;
};

} // namespace water

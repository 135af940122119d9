// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace logbook {

/// What a log that was brought in says under a name that means nothing here: kept and given out
/// again, never looked at.
struct OtherField {
    std::string column;
    std::string text;
    friend bool operator==(const OtherField&, const OtherField&) = default;
};

} // namespace logbook

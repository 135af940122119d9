// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

namespace readers {

/// The checksum of an NMEA 0183 sentence: all characters between '$' (or '!') and '*', each
/// exclusive-or'd.
[[nodiscard]] std::uint8_t nmeaChecksum(std::string_view body);

/// One sentence taken apart. Views into the line it came from.
struct NmeaSentence {
    enum class Sum { right, wrong, absent };

    std::string_view talker;              ///< "GP"; empty for a proprietary sentence.
    std::string_view type;                ///< "RMC"; for a proprietary one all of it.
    std::vector<std::string_view> fields; ///< Behind the type; without the checksum.
    Sum sum = Sum::absent;
    std::string_view whole; ///< From '$' on.

    /// The field counted from 1; empty where there are fewer.
    [[nodiscard]] std::string_view field(std::size_t number) const {
        return number >= 1 && number <= fields.size() ? fields[number - 1] : std::string_view{};
    }
    [[nodiscard]] std::optional<double> number(std::size_t field) const;
    /// Degrees of "ddmm.mmmm" and "N", which stand in two fields one after the other.
    [[nodiscard]] std::optional<double> angle_deg(std::size_t field) const;
    /// Seconds since midnight of "hhmmss.sss".
    [[nodiscard]] std::optional<double> timeOfDay_s(std::size_t field) const;
};

/// Cuts the next sentence, from its '$' on, off the front of `rest`. What stands before it (a TAG
/// block of NMEA 4.10, even one with a '$' in it, the time of a logger, binary junk) and sentences
/// that begin with '!' are passed over. Empty where there is none.
[[nodiscard]] std::string_view nextSentence(std::string_view& rest);

/// Takes apart what begins with '$'; false where it is no sentence. `sentence` is given from
/// outside so that its fields need no new memory for each line.
[[nodiscard]] bool takeApart(std::string_view text, NmeaSentence& sentence);

} // namespace readers

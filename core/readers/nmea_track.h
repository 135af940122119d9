// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/lon_lat.h"
#include "core/readers/reading_report.h"

#include <cstddef>
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace readers {

/// A depth of a log with its place; the time counts from some midnight until a date is known.
struct PlacedDepth {
    geo::LonLat place;
    double depth_m = 0.0;
    std::int64_t time_ms = 0;
    std::size_t line = 0;
};

/// All that one source of depth in a log gave.
struct NmeaDepths {
    std::string name; ///< Talker and sentence: "SDDPT".
    std::size_t heard = 0;
    bool isBelowSurface = false;
    std::vector<PlacedDepth> placed;
    ReadingReport report; ///< What could not be placed.
};

/// Puts times and places to depths. A sounder's sentence has neither: its time is that of the
/// clock sentence before it, several within one tick of the clock spread evenly over it; its place
/// lies straight between the fixes before and after, if these are no more than longestGap_ms apart.
class NmeaTrack {
public:
    static constexpr std::int64_t longestGap_ms = 5000;

    /// A sentence with a time of day and, maybe, a date (days since 1970). False where it is older
    /// than what was heard before, so that its fix is of no use.
    bool hearTime(double timeOfDay_s, std::optional<std::int64_t> date);
    /// A fix without any time: the clock ticks by a second of its own.
    void tick();
    /// A fix at the present time; of several the first counts.
    void hearFix(geo::LonLat place);
    /// The receiver says that it does not know where it is.
    void hearVoidFix();
    void hearDepth(std::string_view name, double depth_m, bool isBelowSurface, std::size_t line,
                   std::string_view text);
    /// A depth sentence that holds no depth.
    void hearNoDepth(std::string_view name, std::size_t line, std::string_view text);
    void finish();

    [[nodiscard]] std::vector<NmeaDepths>& sources() { return sources_; }
    [[nodiscard]] std::size_t fixCount() const { return fixCount_; }
    /// Milliseconds from 1970 to the midnight that times count from; nothing where the log has no
    /// date or its clock sentences have no time.
    [[nodiscard]] std::optional<std::int64_t> epoch_ms() const;

private:
    struct Depth {
        std::size_t source = 0;
        double depth_m = 0.0;
        std::int64_t time_ms = 0;
        std::size_t line = 0;
    };
    struct Fix {
        geo::LonLat place;
        std::int64_t time_ms = 0;
    };

    NmeaDepths& source(std::string_view name);
    void moveClock(std::int64_t time_ms);
    void closeTick(std::optional<std::int64_t> length_ms);
    void place(const Depth& depth, const Fix& after);
    void refuse(const Depth& depth, std::string_view reason);
    void refuseWaiting();

    std::vector<NmeaDepths> sources_;
    std::map<std::string, std::size_t, std::less<>> sourceByName_;
    std::optional<std::int64_t> now_ms_;
    std::int64_t day_ = 0;                   ///< Since the log's first midnight.
    std::optional<std::int64_t> dateOfDay0_; ///< Days since 1970.
    bool isTimed_ = true;
    bool isVoid_ = false;
    std::optional<Fix> fix_;          ///< The latest.
    std::vector<Depth> heard_;        ///< Within the present tick.
    std::vector<Depth> waiting_;      ///< With a time, until the next fix.
    std::vector<std::size_t> counts_; ///< For each source; zero between ticks.
    std::vector<std::size_t> seen_;
    std::int64_t tick_ms_ = 1000;
    std::size_t fixCount_ = 0;
};

} // namespace readers

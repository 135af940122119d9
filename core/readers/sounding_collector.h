// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/readers/soundings_file.h"

#include <string_view>

namespace readers {

/// What one row of a file says, before it is known whether it makes sense.
struct RawSounding {
    double x_deg = 0.0; ///< Longitude, unless the file has them swapped.
    double y_deg = 0.0;
    double depth_m = 0.0; ///< May be negative: elevations.
    std::optional<units::Moment> time;
};

/// Gathers the rows of one file, refuses those that cannot be, and, at the end, sees what only the
/// whole file can tell: coordinates swapped, depths given as elevations, feet taken for metres.
class SoundingCollector {
public:
    SoundingCollector(SoundingFileKind kind, std::string where) : where_(std::move(where)) {
        read_.kind = kind;
    }

    ReadingReport& report() { return read_.report; }
    ReadSoundings& read() { return read_; }
    /// One row with position and depth; `line` and `text` for the report where it is refused.
    void take(const RawSounding& row, std::size_t line, std::string_view text);
    /// The track breaks here.
    void breakTrack();
    [[nodiscard]] std::size_t size() const { return read_.soundings.size(); }

    /// \return unusableInput where no sounding is left; `positions` and `depths` are how many rows
    /// had one, for the message.
    [[nodiscard]] base::Result<ReadSoundings> finish(const SoundingFileSettings& settings,
                                                     std::size_t positions, std::size_t depths);

private:
    void turnElevations();
    [[nodiscard]] geo::LonLat middlePlace() const;
    void turnSwapped(const SoundingFileSettings& settings);
    void dropImpossible();
    void noteOddDepths();
    [[nodiscard]] base::Error nothingUsable(std::size_t positions, std::size_t depths) const;

    ReadSoundings read_;
    std::string where_;
    // Soundings are kept as they come in read_.soundings, swapped or negative as they may be: a
    // file of millions of rows is held once.
    std::vector<std::uint32_t> lines_; ///< Of each sounding; the last number there is beyond it.
    std::vector<std::size_t> breaks_;
};

} // namespace readers

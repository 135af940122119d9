// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <fstream>
#include <string>
#include <string_view>

namespace readers {

/// Reads a text file line by line, never more than a piece of it in memory. Takes LF, CR LF and CR,
/// UTF-8 and UTF-16, each with or without mark. A line longer than longestLine is cut there, so
/// that a file without line breaks costs no memory.
class LineReader {
public:
    static constexpr std::size_t longestLine = 65536;

    /// \return unusableInput where the file is not there, is a folder, or is empty.
    [[nodiscard]] static base::Result<LineReader> open(const std::filesystem::path& path);

    /// The next line without its end; false at the end of the file. `line` stays valid until the
    /// next call.
    [[nodiscard]] bool next(std::string_view& line);
    /// Number of the present line, from 1.
    [[nodiscard]] std::size_t lineNumber() const { return lineNumber_; }
    /// True where the present line was longer than longestLine.
    [[nodiscard]] bool wasCut() const { return wasCut_; }
    /// True where the file ended without a line end behind the present line.
    [[nodiscard]] bool isLastWithoutEnd() const { return lastWithoutEnd_; }
    /// Share of the file that is read, 0 to 1.
    [[nodiscard]] double share() const;
    /// Tells the share every few thousand lines; false once the user wants to stop.
    [[nodiscard]] bool tell(base::Progress& progress) const;

private:
    enum class Encoding { bytes, utf16Little, utf16Big };

    LineReader() = default;
    bool fill();
    void findEncoding();
    [[nodiscard]] Encoding encodingWithoutMark() const;
    void transcode();

    std::ifstream file_;
    std::uintmax_t size_ = 0;
    std::uintmax_t taken_ = 0;
    Encoding encoding_ = Encoding::bytes;
    bool isFirst_ = true;
    std::string raw_;    ///< As read; for UTF-16 an odd byte is left over for the next piece.
    std::string buffer_; ///< Text not yet given out, from at_ on.
    std::size_t at_ = 0;
    std::string line_;
    std::size_t lineNumber_ = 0;
    bool wasCut_ = false;
    bool lastWithoutEnd_ = false;
    bool skipLineFeed_ = false;
};

} // namespace readers

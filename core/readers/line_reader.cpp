// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/line_reader.h"

#include "core/base/readable_file.h"

#include <algorithm>
#include <array>

namespace readers {

namespace {

constexpr std::size_t pieceSize = 1U << 18U;

void appendUtf8(std::string& text, std::uint32_t unit) {
    const auto put = [&](std::uint32_t byte) { text.push_back(static_cast<char>(byte)); };
    if (unit < 0x80U) {
        put(unit);
    } else if (unit < 0x800U) {
        put(0xC0U | (unit >> 6U));
        put(0x80U | (unit & 0x3FU));
    } else {
        put(0xE0U | (unit >> 12U));
        put(0x80U | ((unit >> 6U) & 0x3FU));
        put(0x80U | (unit & 0x3FU));
    }
}

/// As find_first_of("\r\n"), which calls a function for each character.
std::size_t endOfLine(std::string_view text) {
    const auto* const end =
        std::ranges::find_if(text, [](char c) { return c == '\n' || c == '\r'; });
    return end == text.end() ? std::string_view::npos
                             : static_cast<std::size_t>(end - text.begin());
}

} // namespace

base::Result<LineReader> LineReader::open(const std::filesystem::path& path) {
    using base::ErrorKind;
    const auto size = base::sizeOfReadableFile(path);
    if (!size) {
        return std::unexpected(size.error());
    }
    LineReader reader;
    reader.file_.open(path, std::ios::binary);
    if (!reader.file_) {
        return base::fail(ErrorKind::unusableInput, "the file cannot be opened", path.string(),
                          "check that you may read it");
    }
    reader.size_ = *size;
    if (!reader.fill()) {
        return base::fail(ErrorKind::unusableInput, "the file is empty", path.string(),
                          "copy it again from where it was recorded");
    }
    return reader;
}

LineReader::Encoding LineReader::encodingWithoutMark() const {
    // Every second byte of UTF-16 is zero where the text is numbers; no other text holds zeros.
    constexpr std::size_t enough = 512;
    std::array<std::size_t, 2> zeros{};
    const std::size_t size = std::min(raw_.size(), enough) / 2 * 2;
    for (std::size_t i = 0; i < size; ++i) {
        zeros[i % 2] += raw_[i] == '\0' ? 1U : 0U;
    }
    const auto isFull = [&](std::size_t count) { return size >= 4 && count * 20 >= size * 9; };
    if (isFull(zeros[1]) && zeros[0] == 0) {
        return Encoding::utf16Little;
    }
    return isFull(zeros[0]) && zeros[1] == 0 ? Encoding::utf16Big : Encoding::bytes;
}

void LineReader::findEncoding() {
    const auto begins = [&](std::string_view mark) { return raw_.starts_with(mark); };
    if (begins("\xEF\xBB\xBF")) {
        raw_.erase(0, 3);
    } else if (begins("\xFF\xFE")) {
        encoding_ = Encoding::utf16Little;
        raw_.erase(0, 2);
    } else if (begins("\xFE\xFF")) {
        encoding_ = Encoding::utf16Big;
        raw_.erase(0, 2);
    } else {
        encoding_ = encodingWithoutMark();
    }
}

void LineReader::transcode() {
    if (encoding_ == Encoding::bytes) {
        buffer_ += raw_;
        raw_.clear();
        return;
    }
    const std::size_t low = encoding_ == Encoding::utf16Little ? 0 : 1;
    std::size_t i = 0;
    for (; i + 1 < raw_.size(); i += 2) {
        const std::uint32_t unit =
            static_cast<unsigned char>(raw_[i + low]) |
            (static_cast<std::uint32_t>(static_cast<unsigned char>(raw_[i + 1 - low])) << 8U);
        const bool isSurrogate = unit >= 0xD800U && unit < 0xE000U;
        appendUtf8(buffer_, isSurrogate ? std::uint32_t{'?'} : unit);
    }
    raw_.erase(0, i);
}

bool LineReader::fill() {
    buffer_.erase(0, at_);
    at_ = 0;
    const std::size_t before = raw_.size();
    raw_.resize(before + pieceSize);
    file_.read(raw_.data() + before, static_cast<std::streamsize>(pieceSize));
    const auto got = static_cast<std::size_t>(file_.gcount());
    raw_.resize(before + got);
    taken_ += got;
    if (got == 0) {
        return false;
    }
    if (isFirst_) {
        isFirst_ = false;
        findEncoding();
    }
    transcode();
    return true;
}

bool LineReader::next(std::string_view& line) {
    line_.clear();
    wasCut_ = false;
    bool hasAny = false;
    for (;;) {
        if (skipLineFeed_ && at_ < buffer_.size()) {
            at_ += buffer_[at_] == '\n' ? 1U : 0U;
            skipLineFeed_ = false;
        }
        const std::string_view rest = std::string_view(buffer_).substr(at_);
        const std::size_t end = endOfLine(rest);
        const std::string_view part = rest.substr(0, end);
        hasAny = hasAny || !part.empty();
        const std::size_t room = longestLine - line_.size();
        wasCut_ = wasCut_ || part.size() > room;
        if (end != std::string_view::npos) {
            at_ += end + 1;
            skipLineFeed_ = rest[end] == '\r';
            ++lineNumber_;
            if (line_.empty() && !wasCut_) {
                line = part;
            } else {
                line_ += part.substr(0, room);
                line = line_;
            }
            return true;
        }
        line_ += part.substr(0, room);
        at_ = buffer_.size();
        if (!fill()) {
            lastWithoutEnd_ = hasAny;
            lineNumber_ += hasAny ? 1U : 0U;
            line = line_;
            return hasAny;
        }
    }
}

double LineReader::share() const {
    if (size_ == 0) {
        return 0.0;
    }
    const double left =
        encoding_ == Encoding::bytes ? static_cast<double>(buffer_.size() - at_) : 0.0;
    return std::clamp((static_cast<double>(taken_) - left) / static_cast<double>(size_), 0.0, 1.0);
}

bool LineReader::tell(base::Progress& progress) const {
    constexpr std::size_t often = 4096;
    if (lineNumber_ % often != 0) {
        return true;
    }
    progress.tell(share());
    return !progress.stopAsked();
}

} // namespace readers

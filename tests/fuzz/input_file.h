// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <filesystem>

namespace fuzz {

/// The bytes of one case as a file: readers take paths. It lies in memory (/dev/shm) where there is
/// such a place, alone in a folder of this process, because GDAL looks at what stands beside a
/// file.
class InputFile {
public:
    InputFile(const std::uint8_t* bytes, std::size_t size);
    [[nodiscard]] const std::filesystem::path& path() const { return path_; }

private:
    std::filesystem::path path_;
};

} // namespace fuzz

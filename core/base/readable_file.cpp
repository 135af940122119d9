// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/readable_file.h"

#include <fmt/format.h>

namespace base {

namespace fs = std::filesystem;

Result<std::uintmax_t> sizeOfReadableFile(const fs::path& path, std::uintmax_t most) {
    std::error_code fault;
    const fs::file_status status = fs::status(path, fault);
    if (!fs::exists(status)) {
        return fail(ErrorKind::unusableInput, "there is no such file", path.string(),
                    "check the name");
    }
    if (fs::is_directory(status)) {
        return fail(ErrorKind::unusableInput, "it is a folder", path.string(), "name a file in it");
    }
    if (!fs::is_regular_file(status)) {
        return fail(ErrorKind::unusableInput, "it is a pipe or a device and no file", path.string(),
                    "write what comes out of it into a file first");
    }
    const std::uintmax_t size = fs::file_size(path, fault);
    if (fault) {
        return fail(ErrorKind::unusableInput, "the file cannot be looked at", path.string(),
                    "check that you may read it");
    }
    if (size > most) {
        constexpr std::uintmax_t mebibyte = std::uintmax_t{1} << 20U;
        return fail(ErrorKind::unusableInput,
                    fmt::format("the file has {} MiB, and at most {} MiB are read",
                                (size + mebibyte - 1) / mebibyte, most / mebibyte),
                    path.string(), "choose the right file, or cut it into several");
    }
    return size;
}

} // namespace base

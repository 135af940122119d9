// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/disk.h"

#include <cerrno>
#include <cstring>

#include <fcntl.h>
#include <fmt/format.h>
#include <unistd.h>

namespace base {

namespace fs = std::filesystem;

Error cannotWrite(const fs::path& path, int code) {
    return {ErrorKind::unwritableOutput,
            fmt::format("the file cannot be written ({})", std::strerror(code)), path.string(),
            code == ENOSPC || code == EDQUOT || code == EFBIG
                ? "make room on the disk, or choose another place"
                : "check that the folder is there and that you may write in it"};
}

void syncFolder(const fs::path& folder) {
    const int descriptor =
        ::open(folder.empty() ? "." : folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (descriptor >= 0) {
        static_cast<void>(::fsync(descriptor));
        ::close(descriptor);
    }
}

fs::path throughLinks(const fs::path& wanted) {
    constexpr int mostLinks = 40; // as many as Linux follows
    fs::path path = wanted;
    std::error_code fault;
    for (int links = 0; fs::is_symlink(path, fault); ++links) {
        if (links == mostLinks) {
            return wanted;
        }
        const fs::path target = fs::read_symlink(path, fault);
        if (fault) {
            return wanted;
        }
        path = target.is_absolute() ? target : path.parent_path() / target;
    }
    return path;
}

void takeModeOf(const fs::path& older, const fs::path& newer) {
    std::error_code fault;
    const fs::file_status status = fs::status(older, fault);
    if (fs::is_regular_file(status)) {
        fs::permissions(newer, status.permissions(), fault);
    }
}

} // namespace base

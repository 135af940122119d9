// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/whole_file.h"

#include "core/base/disk.h"
#include "core/base/leftovers.h"

#include <cerrno>
#include <cstdio>

#include <fcntl.h>
#include <unistd.h>

namespace base {

namespace {

/// An open file that closes itself.
class Descriptor {
public:
    Descriptor(const std::filesystem::path& path, int flags)
        : number_(::open(path.c_str(), flags | O_CLOEXEC, 0666)) {}
    ~Descriptor() {
        if (number_ >= 0) {
            ::close(number_);
        }
    }
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    Descriptor(Descriptor&&) = delete;
    Descriptor& operator=(Descriptor&&) = delete;

    [[nodiscard]] bool isOpen() const { return number_ >= 0; }
    /// False, with errno set, where the disk says no.
    [[nodiscard]] bool write(std::string_view content) const {
        while (!content.empty()) {
            const ssize_t written = ::write(number_, content.data(), content.size());
            if (written < 0 && errno == EINTR) {
                continue;
            }
            if (written < 0) {
                return false;
            }
            content.remove_prefix(static_cast<std::size_t>(written));
        }
        return true;
    }
    [[nodiscard]] bool sync() const { return ::fsync(number_) == 0; }

private:
    int number_;
};

} // namespace

PendingFile::PendingFile(const std::filesystem::path& wanted)
    : wanted_(throughLinks(wanted)), beside_(besideName(wanted_)) {
    sweepLeftovers(wanted_.parent_path());
}

PendingFile::~PendingFile() {
    if (!isInPlace_) {
        std::error_code ignored;
        std::filesystem::remove(beside_, ignored);
    }
}

Result<void> PendingFile::putInPlace() {
    takeModeOf(wanted_, beside_);
    {
        const Descriptor file(beside_, O_RDONLY);
        if (!file.isOpen() || !file.sync()) {
            return std::unexpected(cannotWrite(wanted_, errno));
        }
    }
    if (::rename(beside_.c_str(), wanted_.c_str()) != 0) {
        return std::unexpected(cannotWrite(wanted_, errno));
    }
    isInPlace_ = true;
    syncFolder(wanted_.parent_path());
    return {};
}

Result<void> writeWholeFile(const std::filesystem::path& path, std::string_view content) {
    PendingFile pending(path);
    {
        const Descriptor file(pending.beside(), O_WRONLY | O_CREAT | O_TRUNC);
        if (!file.isOpen() || !file.write(content)) {
            return std::unexpected(cannotWrite(path, errno));
        }
    }
    return pending.putInPlace();
}

} // namespace base

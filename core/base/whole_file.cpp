// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/whole_file.h"

#include <atomic>
#include <cerrno>
#include <charconv>
#include <chrono>
#include <csignal>
#include <cstring>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include <fcntl.h>
#include <fmt/format.h>
#include <unistd.h>

namespace base {

namespace {

std::filesystem::path besideName(const std::filesystem::path& wanted) {
    static std::atomic<int> count{0};
    return wanted.parent_path() /
           fmt::format(".{}.{}-{}.part", wanted.filename().string(), ::getpid(), ++count);
}

/// The process that `name` was given out by, where it is one of ours for `wanted`.
std::optional<pid_t> ownerOf(std::string_view name, const std::filesystem::path& wanted) {
    const std::string before = "." + wanted.filename().string() + ".";
    constexpr std::string_view after = ".part";
    if (name.size() <= before.size() + after.size() || !name.starts_with(before) ||
        !name.ends_with(after)) {
        return std::nullopt;
    }
    name.remove_prefix(before.size());
    name.remove_suffix(after.size());
    pid_t process = 0;
    const auto [end, fault] = std::from_chars(name.data(), name.data() + name.size(), process);
    const bool isOurs =
        fault == std::errc() && process > 0 && end != name.data() + name.size() && *end == '-';
    return isOurs ? std::optional(process) : std::nullopt;
}

/// Removes what runs of ours that are no more have left beside `wanted`. Where the folder is shared
/// by several machines the process may be one of another: so what was just written stays.
void sweepBeside(const std::filesystem::path& wanted) {
    constexpr auto surelyLeft = std::chrono::minutes(10);
    const auto now = std::filesystem::file_time_type::clock::now();
    const std::filesystem::path parent = wanted.parent_path();
    std::error_code fault;
    std::filesystem::directory_iterator entry(parent.empty() ? "." : parent, fault);
    for (; !fault && entry != std::filesystem::directory_iterator(); entry.increment(fault)) {
        const auto owner = ownerOf(entry->path().filename().string(), wanted);
        std::error_code ignored;
        if (owner && ::kill(*owner, 0) != 0 && errno == ESRCH &&
            now - entry->last_write_time(ignored) > surelyLeft && !ignored) {
            std::filesystem::remove(entry->path(), ignored);
        }
    }
}

/// Where a link leads: it is the file there that is replaced, not the link.
std::filesystem::path throughLinks(const std::filesystem::path& wanted) {
    std::error_code fault;
    if (!std::filesystem::is_symlink(wanted, fault)) {
        return wanted;
    }
    const std::filesystem::path real = std::filesystem::canonical(wanted, fault);
    return fault ? wanted : real;
}

/// Whoever could read and write the file that stood there can do so with the new one.
void takeModeOf(const std::filesystem::path& older, const std::filesystem::path& newer) {
    std::error_code fault;
    const std::filesystem::file_status status = std::filesystem::status(older, fault);
    if (std::filesystem::is_regular_file(status)) {
        std::filesystem::permissions(newer, status.permissions(), fault);
    }
}

std::unexpected<Error> cannotWrite(const std::filesystem::path& path, int code) {
    return fail(ErrorKind::unwritableOutput,
                fmt::format("the file cannot be written ({})", std::strerror(code)), path.string(),
                code == ENOSPC || code == EDQUOT || code == EFBIG
                    ? "make room on the disk, or choose another place"
                    : "check that the folder is there and that you may write in it");
}

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
    sweepBeside(wanted_);
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
            return cannotWrite(wanted_, errno);
        }
    }
    if (::rename(beside_.c_str(), wanted_.c_str()) != 0) {
        return cannotWrite(wanted_, errno);
    }
    isInPlace_ = true;
    // The new name lasts once the folder is on the disk; some file systems cannot say so.
    const std::filesystem::path parent = wanted_.parent_path();
    const Descriptor folder(parent.empty() ? std::filesystem::path(".") : parent,
                            O_RDONLY | O_DIRECTORY);
    if (folder.isOpen()) {
        static_cast<void>(folder.sync());
    }
    return {};
}

Result<void> writeWholeFile(const std::filesystem::path& path, std::string_view content) {
    PendingFile pending(path);
    {
        const Descriptor file(pending.beside(), O_WRONLY | O_CREAT | O_TRUNC);
        if (!file.isOpen() || !file.write(content)) {
            return cannotWrite(path, errno);
        }
    }
    return pending.putInPlace();
}

} // namespace base

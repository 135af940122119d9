// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/owner_lock.h"

#include "core/base/number_text.h"

#include <algorithm>
#include <array>
#include <cerrno>
#include <csignal>
#include <sstream>
#include <string_view>
#include <utility>

#include <fcntl.h>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

namespace store {

namespace {

constexpr std::size_t longestName = 64; ///< Of a program or host; more is nobody's name.
constexpr int mostTries = 100;          ///< Against openings that come and go at the same moment.

std::string hostName() {
    std::array<char, 256> name{};
    return ::gethostname(name.data(), name.size() - 1) == 0 ? std::string(name.data())
                                                            : std::string();
}

/// What a name may hold on one line of a terminal.
std::string plain(std::string name) {
    std::erase_if(name, [](unsigned char c) { return c < 0x20 || c == 0x7f; });
    name.resize(std::min(name.size(), longestName));
    return name;
}

/// True where the process is on this host and has ended: then it is another one that has the lock
/// and has not said so yet.
bool hasEnded(const Owner& owner) {
    return owner.host == hostName() && ::kill(static_cast<pid_t>(owner.process), 0) != 0 &&
           errno == ESRCH;
}

/// Who wrote the file last; nobody known where it is empty, or written by one that is gone.
Owner readOwner(int descriptor) {
    std::array<char, 1024> bytes{};
    const ssize_t size = ::pread(descriptor, bytes.data(), bytes.size(), 0);
    std::istringstream lines(
        std::string(bytes.data(), static_cast<std::size_t>(std::max<ssize_t>(size, 0))));
    Owner owner;
    for (std::string line; std::getline(lines, line);) {
        const auto at = line.find('=');
        const std::string_view key = std::string_view(line).substr(0, at);
        const std::string value = at == std::string::npos ? "" : plain(line.substr(at + 1));
        if (key == "program") {
            owner.program = value;
        } else if (key == "process") {
            owner.process = base::wholeNumberFrom(value).value_or(0);
        } else if (key == "host") {
            owner.host = value;
        }
    }
    const bool isSaid = !owner.program.empty() && owner.process > 0 && !owner.host.empty();
    return isSaid && !hasEnded(owner) ? owner : Owner();
}

/// Says in the file who has it. On a full disk it stays empty: the lock holds all the same.
void sign(int descriptor) {
    const std::string text = fmt::format("program={}\nprocess={}\nhost={}\n",
                                         program_invocation_short_name, ::getpid(), hostName());
    if (::ftruncate(descriptor, 0) == 0) {
        static_cast<void>(::pwrite(descriptor, text.data(), text.size(), 0));
    }
}

/// True where the open file is the one that stands at `place`.
bool standsAt(int descriptor, const std::filesystem::path& place) {
    struct stat opened {};
    struct stat named {};
    return ::fstat(descriptor, &opened) == 0 && ::lstat(place.c_str(), &named) == 0 &&
           opened.st_dev == named.st_dev && opened.st_ino == named.st_ino;
}

bool isOrdinary(int descriptor) {
    struct stat opened {};
    return ::fstat(descriptor, &opened) == 0 && S_ISREG(opened.st_mode);
}

/// Open for reading alone where the leftover of another user may not be written. \return -1, with
/// errno, where it cannot be opened.
int openLockFile(const std::filesystem::path& place) {
    constexpr int always = O_CLOEXEC | O_NOFOLLOW | O_NONBLOCK;
    const int descriptor = ::open(place.c_str(), O_RDWR | O_CREAT | always, 0666);
    if (descriptor >= 0 || errno != EACCES) {
        return descriptor;
    }
    const int readable = ::open(place.c_str(), O_RDONLY | always);
    errno = readable < 0 ? EACCES : errno; // Not that there is none: that none can be made.
    return readable;
}

NoLock reasonOf(int code) {
    return code == EACCES || code == EPERM || code == EROFS ? NoLock::closedToUs
                                                            : NoLock::notOffered;
}

} // namespace

std::string Owner::text() const {
    return program.empty() ? std::string("another program")
                           : fmt::format("{} (process {} on {})", program, process, host);
}

std::filesystem::path OwnerLock::pathFor(const std::filesystem::path& water) {
    std::error_code fault;
    std::filesystem::path real = std::filesystem::weakly_canonical(water, fault);
    if (fault) {
        real = std::filesystem::absolute(water, fault);
    }
    return real.parent_path() / fmt::format(".{}.owner", real.filename().string());
}

OwnerLock::Taken OwnerLock::take(const std::filesystem::path& water, LockCall lock) {
    const std::filesystem::path place = pathFor(water);
    for (int tries = 0; tries < mostTries; ++tries) {
        const int descriptor = openLockFile(place);
        if (descriptor < 0) {
            return reasonOf(errno);
        }
        OwnerLock taken(place, descriptor);
        if (!isOrdinary(descriptor) || lock(descriptor, LOCK_EX | LOCK_NB) != 0) {
            const int code = isOrdinary(descriptor) ? errno : EINVAL;
            const Owner owner = readOwner(descriptor);
            taken.descriptor_ = -1; // Not ours to take away.
            ::close(descriptor);
            if (code == EINTR) {
                continue;
            }
            return code == EWOULDBLOCK ? Taken(owner) : Taken(NoLock::notOffered);
        }
        // Its owner may have taken it away between our opening and locking it: then it keeps nobody
        // out who comes later.
        if (standsAt(descriptor, place)) {
            sign(descriptor);
            return taken;
        }
    }
    return Owner();
}

OwnerLock::OwnerLock(std::filesystem::path place, int descriptor)
    : place_(std::move(place)), descriptor_(descriptor) {}

OwnerLock::OwnerLock(OwnerLock&& other) noexcept
    : place_(std::move(other.place_)), descriptor_(std::exchange(other.descriptor_, -1)) {}

OwnerLock& OwnerLock::operator=(OwnerLock&& other) noexcept {
    std::swap(place_, other.place_);
    std::swap(descriptor_, other.descriptor_);
    return *this;
}

OwnerLock::~OwnerLock() {
    if (descriptor_ < 0) {
        return;
    }
    // First the name, then the lock: the other way round somebody could have locked it meanwhile.
    if (standsAt(descriptor_, place_)) {
        ::unlink(place_.c_str());
    }
    ::close(descriptor_);
}

} // namespace store

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/leftovers.h"

#include <atomic>
#include <cerrno>
#include <charconv>
#include <chrono>
#include <csignal>
#include <cstdint>
#include <fstream>
#include <optional>
#include <string>
#include <string_view>

#include <fmt/format.h>
#include <unistd.h>

namespace base {

namespace fs = std::filesystem;

namespace {

constexpr std::size_t machineDigits = 8;
constexpr std::string_view partEnd = ".part";

/// Where process numbers mean the same: one machine since it was started, one container of it.
std::string machineNow() {
    std::string text;
    std::ifstream("/proc/sys/kernel/random/boot_id") >> text;
    std::error_code fault;
    text += fs::read_symlink("/proc/self/ns/pid", fault).string();
    std::uint32_t sum = 2166136261U; // FNV-1a (Fowler, Noll, Vo)
    for (const char c : text) {
        sum = (sum ^ static_cast<unsigned char>(c)) * 16777619U;
    }
    return fmt::format("{:08x}", sum);
}

const std::string& machine() {
    static const std::string text = machineNow();
    return text;
}

/// Who gave out a name.
struct Giver {
    std::string_view machine;
    pid_t process = 0;
};

/// Takes a whole number off the front of `text`; nothing where there is none.
std::optional<pid_t> numberOff(std::string_view& text) {
    pid_t number = 0;
    const auto [end, fault] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (fault != std::errc() || number <= 0) {
        return std::nullopt;
    }
    text.remove_prefix(static_cast<std::size_t>(end - text.data()));
    return number;
}

/// Reads "1f0c22ab-4711-3.part", with anything behind it: journals and locks are laid beside.
std::optional<Giver> giverAt(std::string_view text) {
    if (text.size() <= machineDigits || text[machineDigits] != '-' ||
        text.find_first_not_of("0123456789abcdef") != machineDigits) {
        return std::nullopt;
    }
    Giver giver{text.substr(0, machineDigits), 0};
    text.remove_prefix(machineDigits + 1);
    const auto process = numberOff(text);
    if (!process || !text.starts_with('-')) {
        return std::nullopt;
    }
    text.remove_prefix(1);
    if (!numberOff(text) || !text.starts_with(partEnd)) {
        return std::nullopt;
    }
    giver.process = *process;
    return giver;
}

/// Who gave out `name`, where it is one of besideName() or of something laid beside such a one.
std::optional<Giver> giverOf(std::string_view name) {
    if (!name.starts_with('.')) {
        return std::nullopt;
    }
    for (std::size_t at = name.find('.', 1); at != std::string_view::npos;
         at = name.find('.', at + 1)) {
        if (const auto giver = giverAt(name.substr(at + 1))) {
            return giver;
        }
    }
    return std::nullopt;
}

/// True where nobody can be at it any more.
bool isLeft(const Giver& giver, const fs::directory_entry& entry) {
    if (giver.machine == machine()) {
        return ::kill(giver.process, 0) != 0 && errno == ESRCH;
    }
    constexpr auto surelyLeft = std::chrono::hours(1);
    std::error_code fault;
    const auto written = entry.last_write_time(fault);
    return !fault && fs::file_time_type::clock::now() - written > surelyLeft;
}

} // namespace

fs::path besideName(const fs::path& wanted) {
    constexpr std::size_t longest = 200; // of the 255 bytes that a name may have
    static std::atomic<int> count{0};
    return wanted.parent_path() / fmt::format(".{}.{}-{}-{}{}",
                                              wanted.filename().string().substr(0, longest),
                                              machine(), ::getpid(), ++count, partEnd);
}

void sweepLeftovers(const fs::path& folder) {
    std::error_code fault;
    fs::directory_iterator entry(folder.empty() ? fs::path(".") : folder, fault);
    for (; !fault && entry != fs::directory_iterator(); entry.increment(fault)) {
        const std::string name = entry->path().filename().string();
        const auto giver = giverOf(name);
        if (giver && isLeft(*giver, *entry)) {
            std::error_code ignored;
            fs::remove_all(entry->path(), ignored); // links are removed and not followed
        }
    }
}

} // namespace base

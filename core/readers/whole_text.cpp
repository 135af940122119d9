// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/whole_text.h"

#include <fstream>
#include <sstream>

namespace readers {

base::Result<std::string> wholeText(const std::filesystem::path& path) {
    using base::ErrorKind;
    constexpr std::uintmax_t most = 64U << 20U;
    std::error_code fault;
    const auto size = std::filesystem::file_size(path, fault);
    std::ifstream file(path, std::ios::binary);
    if (fault || !file) {
        return base::fail(ErrorKind::unusableInput, "there is no such file", path.string(),
                          "check the name");
    }
    if (size == 0 || size > most) {
        return base::fail(ErrorKind::unusableInput,
                          size == 0 ? "the file is empty" : "the file is too large to be one",
                          path.string(), "choose the right file");
    }
    std::ostringstream text;
    text << file.rdbuf();
    return std::move(text).str();
}

} // namespace readers

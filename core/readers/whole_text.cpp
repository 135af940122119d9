// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/whole_text.h"

#include "core/base/readable_file.h"

#include <fstream>
#include <sstream>

namespace readers {

base::Result<std::string> wholeText(const std::filesystem::path& path) {
    using base::ErrorKind;
    constexpr std::uintmax_t most = 64U << 20U;
    const auto size = base::sizeOfReadableFile(path, most);
    if (!size) {
        return std::unexpected(size.error());
    }
    std::ifstream file(path, std::ios::binary);
    if (!file) {
        return base::fail(ErrorKind::unusableInput, "the file cannot be opened", path.string(),
                          "check that you may read it");
    }
    if (*size == 0) {
        return base::fail(ErrorKind::unusableInput, "the file is empty", path.string(),
                          "choose the right file");
    }
    std::ostringstream text;
    text << file.rdbuf();
    return std::move(text).str();
}

} // namespace readers

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/quoted_rows.h"

#include <algorithm>

namespace readers {

namespace {

bool isBreak(char c) {
    return c == '\n' || c == '\r';
}

std::string_view withoutBlanksBehind(std::string_view text) {
    while (!text.empty() && (text.back() == ' ' || text.back() == '\t')) {
        text.remove_suffix(1);
    }
    return text;
}

/// Line breaks, each of CR, LF or both together.
std::size_t breaksIn(std::string_view text) {
    std::size_t count = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool isSecondHalf = text[i] == '\n' && i > 0 && text[i - 1] == '\r';
        count += isBreak(text[i]) && !isSecondHalf ? 1U : 0U;
    }
    return count;
}

} // namespace

double QuotedRows::share() const {
    return text_.empty() ? 1.0 : static_cast<double>(at_) / static_cast<double>(text_.size());
}

bool QuotedRows::isEndOfCell(std::size_t at) const {
    return at >= text_.size() || text_[at] == separator_ || isBreak(text_[at]);
}

std::size_t QuotedRows::behindBlanks(std::size_t at) const {
    while (at < text_.size() && text_[at] != separator_ &&
           (text_[at] == ' ' || text_[at] == '\t')) {
        ++at;
    }
    return at;
}

bool QuotedRows::takeQuoted(std::string& cell) {
    std::size_t at = behindBlanks(at_);
    if (at >= text_.size() || text_[at] != '"') {
        return false;
    }
    for (++at; at < text_.size(); ++at) {
        if (text_[at] != '"') {
            cell += text_[at];
        } else if (at + 1 < text_.size() && text_[at + 1] == '"') {
            cell += text_[++at];
        } else {
            at = behindBlanks(at + 1);
            if (!isEndOfCell(at)) {
                return false;
            }
            lines_ += breaksIn(cell);
            at_ = at;
            return true;
        }
    }
    return false;
}

std::string QuotedRows::cell() {
    std::string quoted;
    if (takeQuoted(quoted)) {
        return quoted;
    }
    const std::size_t from = behindBlanks(at_);
    while (!isEndOfCell(at_)) {
        ++at_;
    }
    return at_ > from ? std::string(withoutBlanksBehind(text_.substr(from, at_ - from)))
                      : std::string();
}

bool QuotedRows::next(std::vector<std::string>& cells) {
    cells.clear();
    if (at_ >= text_.size()) {
        return false;
    }
    line_ = ++lines_;
    const std::size_t from = at_;
    cells.push_back(cell());
    while (at_ < text_.size() && text_[at_] == separator_) {
        ++at_;
        cells.push_back(cell());
    }
    row_ = text_.substr(from, at_ - from);
    if (at_ < text_.size()) {
        const bool isPair = text_[at_] == '\r' && at_ + 1 < text_.size() && text_[at_ + 1] == '\n';
        at_ += isPair ? 2 : 1;
    }
    return true;
}

} // namespace readers

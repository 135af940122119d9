// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/rules/source_text.h"

#include <string>
#include <string_view>
#include <vector>

namespace rules {

/// One text of a source, its literals joined, and what becomes of it.
struct Said {
    enum class Way {
        translated, ///< tr("..."), Tongue::tr("..."), QT_TRANSLATE_NOOP("wording", "...")
        counted,    ///< Tongue::counted("many", "one", n): here the many
        one,        ///< the one of it, or a comment for translators
        plain,      ///< said as it stands
    };
    int line = 0;
    std::string text; ///< Escapes read: a line break is one.
    Way way = Way::plain;
    std::string one;  ///< With counted, the form for one; with a comment, the comment.
    std::string lead; ///< The code before it.
};

/// All texts of a source that are no include.
[[nodiscard]] std::vector<Said> saidIn(const SourceText& source);

/// True for what somebody reads as a sentence or a part of one: words with a blank between. Keys,
/// names of files, SQL, markup and formats are none.
[[nodiscard]] bool isProse(std::string_view text);

/// True for a single word that stands where the desk shows it: QStringLiteral("Area").
[[nodiscard]] bool isShownWord(const Said& said);

/// One message of a catalogue for translators.
struct Message {
    std::string source;
    std::string comment;
    std::vector<std::string> forms; ///< One; as many as the language has where it counts.
    bool isCounted = false;
    bool isFinished = true; ///< Not "unfinished", "vanished" or "obsolete".
};

/// Those of a .ts file, in its order.
[[nodiscard]] std::vector<Message> messagesOf(std::string_view catalogue);

/// "%1", "%L1", "%n", "{}": what a text leaves open, sorted; of gaps with a format only that they
/// are one.
[[nodiscard]] std::vector<std::string> gapsOf(std::string_view text);

} // namespace rules

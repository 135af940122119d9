// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QImage>
#include <QString>
#include <QStringList>

namespace window {

/// The chapters of the user's guide, which are files of resources/guide, in the order in which they
/// are read. The last one, "keys", is made of the page of keys.
[[nodiscard]] QStringList guideChapters();

/// A chapter in the language that is spoken, in English where it is not translated: Markdown. Empty
/// where there is no such chapter.
[[nodiscard]] QString guideText(const QString& chapter);

/// A picture of the guide ("pictures/tomorrow-1.png") as taken from a desk that speaks the language
/// that is spoken, else English; null where there is none.
[[nodiscard]] QImage guidePicture(const QString& name);

/// What the chapter's first line calls it.
[[nodiscard]] QString guideTitle(const QString& chapter);

/// What links call a heading: lower case, hyphens for blanks, nothing but letters, digits and
/// hyphens. It is the same as on usual hosts of sources, so that links lead somewhere there as
/// well.
[[nodiscard]] QString anchorOf(const QString& heading);

/// The page of keys as Markdown: each part a heading and a table of keys. In a line the key and
/// what it does are two blanks apart; a line that begins farther in goes on with the one above; a
/// line without a key is a sentence.
[[nodiscard]] QString keysAsMarkdown(const QString& page, const QString& title);

} // namespace window

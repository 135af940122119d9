// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRegularExpression>
#include <QString>

#include <vector>

namespace wording {

/// What core can say, beside the same in another language.
///
/// Core knows no Qt and speaks plain English sentences, some with gaps ("no water is left at {}
/// m"). A catalogue holds all of them as they stand in the sources, gaps and all. A sentence is
/// looked up by finding the one it was made of: that with the most letters of its own that fits.
class CoreSentences {
public:
    CoreSentences() = default;
    /// \param file a translation source (.ts); none: nothing is translated.
    [[nodiscard]] static CoreSentences read(const QString& file);

    /// What is not in the catalogue comes back as it is. Numbers in gaps get the decimal mark of
    /// the language, and what fills a gap is itself looked up.
    [[nodiscard]] QString translated(const QString& said) const;

    struct Sentence {
        QString source;
        QString translation;
        QRegularExpression form; ///< Fits just what can be made of the source.
        qsizetype ownLetters = 0;
    };
    [[nodiscard]] const std::vector<Sentence>& all() const { return sentences_; }

private:
    [[nodiscard]] QString filled(const Sentence& sentence, const QStringList& gaps,
                                 int depth) const;
    [[nodiscard]] QString translated(const QString& said, int depth) const;

    std::vector<Sentence> sentences_; ///< Most letters first.
};

} // namespace wording

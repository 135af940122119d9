// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/core_sentences.h"

#include "app/wording/tongue.h"

#include <QFile>
#include <QXmlStreamReader>

#include <algorithm>

namespace wording {

namespace {

/// What a gap looks like in a source: "{}", "{:.1f}", in a translation "{}" or "{1}" too.
const QRegularExpression& gap() {
    static const QRegularExpression form(QStringLiteral("\\{(\\d*)(:[^}]*)?\\}"));
    return form;
}

constexpr auto fewLetters = 8; // "Section {}" has seven.

/// Those that stand in no gap.
qsizetype lettersOf(QString source) {
    source.remove(gap());
    return std::ranges::count_if(source, [](QChar c) { return c.isLetter(); });
}

CoreSentences::Sentence made(const QString& source, const QString& translation) {
    QString form = QStringLiteral("\\A");
    qsizetype from = 0;
    qsizetype own = 0;
    const bool isShort = lettersOf(source) < fewLetters;
    const auto takeLetters = [&](qsizetype to) {
        form += QRegularExpression::escape(source.sliced(from, to - from));
        own += to - from;
    };
    for (auto it = gap().globalMatch(source); it.hasNext();) {
        const QRegularExpressionMatch match = it.next();
        takeLetters(match.capturedStart());
        // What is written with a number's format holds no words, and what has hardly a letter of
        // its own ("day {}") would fit a bait called day glow, were its gap more than a number.
        form += !match.captured(2).isEmpty() ? QStringLiteral("([^ ]+)")
                : isShort                    ? QStringLiteral("([-+]?\\d[\\d.,]*)")
                                             : QStringLiteral("(.+?)");
        from = match.capturedEnd();
    }
    takeLetters(source.size());
    return {source, translation,
            QRegularExpression(form + QStringLiteral("\\z"),
                               QRegularExpression::DotMatchesEverythingOption),
            own};
}

} // namespace

CoreSentences CoreSentences::read(const QString& file) {
    CoreSentences read;
    QFile opened(file);
    if (!opened.open(QIODevice::ReadOnly)) {
        return read;
    }
    QXmlStreamReader xml(&opened);
    QString source;
    while (!xml.atEnd()) {
        xml.readNext();
        if (!xml.isStartElement()) {
            continue;
        }
        if (xml.name() == QLatin1String("source")) {
            source = xml.readElementText();
        } else if (xml.name() == QLatin1String("translation")) {
            if (const QString translation = xml.readElementText(); !translation.isEmpty()) {
                read.sentences_.push_back(made(source, translation));
            }
        }
    }
    std::ranges::stable_sort(read.sentences_, std::greater(), &Sentence::ownLetters);
    return read;
}

QString CoreSentences::filled(const Sentence& sentence, const QStringList& gaps, int depth) const {
    QString text;
    qsizetype from = 0;
    qsizetype next = 0;
    for (auto it = gap().globalMatch(sentence.translation); it.hasNext();) {
        const QRegularExpressionMatch match = it.next();
        text += sentence.translation.sliced(from, match.capturedStart() - from);
        const qsizetype which = match.captured(1).isEmpty() ? next++ : match.captured(1).toInt();
        if (which < gaps.size()) {
            text += translated(gaps[which], depth + 1);
        }
        from = match.capturedEnd();
    }
    return text + sentence.translation.sliced(from);
}

QString CoreSentences::translated(const QString& said) const {
    return translated(said, 0);
}

QString CoreSentences::translated(const QString& said, int depth) const {
    constexpr int deepest = 4; // A sentence in a sentence in a sentence is the most that core says.
    if (said.isEmpty() || sentences_.empty() || depth > deepest) {
        return said;
    }
    static const QRegularExpression decimal(QStringLiteral("\\A[-+]?\\d+\\.\\d+\\z"));
    if (decimal.match(said).hasMatch()) {
        return QString(said).replace(QLatin1Char('.'), Tongue::locale().decimalPoint());
    }
    for (const Sentence& sentence : sentences_) {
        if (const auto match = sentence.form.match(said); match.hasMatch()) {
            return filled(sentence, match.capturedTexts().sliced(1), depth);
        }
    }
    return said;
}

} // namespace wording

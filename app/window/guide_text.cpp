// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/guide_text.h"

#include "app/wording/tongue.h"

#include <QFile>
#include <QRegularExpression>

/// Resources of a static library must be asked for by name, outside of any namespace.
static void initGuideResources() {
    Q_INIT_RESOURCE(guide);
}

namespace window {

namespace {

constexpr QLatin1String keysChapter("keys");

QString textOf(const QString& resource) {
    QFile file(resource);
    return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
}

/// That of the language spoken where there is one.
QString ownOrEnglish(const QString& own, const QString& english) {
    return textOf(QFile::exists(own) ? own : english);
}

/// Nothing in it means anything to Markdown.
QString plain(const QString& words) {
    static const QRegularExpression signs(QStringLiteral(R"(([\\`*_{}\[\]<>#|~+=-]))"));
    QString escaped = words.trimmed();
    return escaped.replace(signs, QStringLiteral(R"(\\1)"));
}

/// One line of the page: a key and what it does, or a sentence.
struct KeyLine {
    QString key; ///< Empty where there is none.
    QString does;
};

KeyLine keyLineOf(const QString& line) {
    static const QRegularExpression gap(QStringLiteral("\\S( {2,})\\S"));
    const QRegularExpressionMatch parted = gap.match(line);
    return parted.hasMatch()
               ? KeyLine{line.left(parted.capturedStart(1)), line.mid(parted.capturedEnd(1))}
               : KeyLine{{}, line};
}

/// Goes on with the line above: it begins where others tell what their key does.
bool isContinued(const QString& line) {
    return line.startsWith(QStringLiteral("    "));
}

} // namespace

QStringList guideChapters() {
    QStringList chapters;
    for (const char* name :
         {"start", "survey-day", "tomorrow", "looking-back", "how-it-draws", "how-the-plan-learns",
          "cautions", "file-formats", "batch", "glossary"}) {
        chapters += QLatin1String(name);
    }
    chapters += QString(keysChapter);
    return chapters;
}

QString guideText(const QString& chapter) {
    initGuideResources();
    const QString code = wording::Tongue::spoken();
    if (chapter == keysChapter) {
        return keysAsMarkdown(ownOrEnglish(QStringLiteral(":/desk/keys_%1.txt").arg(code),
                                           QStringLiteral(":/desk/keys.txt")),
                              wording::Tongue::tr("Keys and files"));
    }
    if (!guideChapters().contains(chapter)) {
        return {};
    }
    return ownOrEnglish(QStringLiteral(":/guide/%1/%2.md").arg(code, chapter),
                        QStringLiteral(":/guide/%1.md").arg(chapter));
}

QImage guidePicture(const QString& name) {
    initGuideResources();
    const QString own = QStringLiteral(":/guide/%1/%2").arg(wording::Tongue::spoken(), name);
    return QImage(QFile::exists(own) ? own : QStringLiteral(":/guide/") + name);
}

QString guideTitle(const QString& chapter) {
    const QString text = guideText(chapter);
    return text.left(text.indexOf('\n')).mid(2).trimmed();
}

QString anchorOf(const QString& heading) {
    QString anchor;
    for (const QChar c : heading.trimmed().toLower()) {
        if (c.isLetterOrNumber() || c == '-') {
            anchor += c;
        } else if (c.isSpace()) {
            anchor += '-';
        }
    }
    return anchor;
}

QString keysAsMarkdown(const QString& page, const QString& title) {
    QString made = QStringLiteral("# ") + plain(title);
    bool isInTable = false;
    const QStringList lines = page.split('\n', Qt::SkipEmptyParts);
    for (qsizetype i = 0; i < lines.size(); ++i) {
        QString line = lines[i];
        while (i + 1 < lines.size() && isContinued(lines[i + 1])) {
            line += ' ' + lines[++i].trimmed();
        }
        const KeyLine parts = keyLineOf(line);
        if (!line.startsWith(' ')) {
            made += QStringLiteral("\n\n## ") + plain(line);
        } else if (parts.key.isEmpty()) {
            made += QStringLiteral("\n\n") + plain(parts.does);
        } else {
            // A table has to have a head; this one needs no words.
            made += isInTable ? QString() : QStringLiteral("\n\n| | |\n| --- | --- |");
            made += QStringLiteral("\n| %1 | %2 |").arg(plain(parts.key), plain(parts.does));
        }
        isInTable = line.startsWith(' ') && !parts.key.isEmpty();
    }
    return made + '\n';
}

} // namespace window

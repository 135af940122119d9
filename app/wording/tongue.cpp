// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/tongue.h"

#include "app/wording/core_sentences.h"
#include "core/base/harmless_text.h"
#include "core/base/number_text.h"

#include <QDir>
#include <QLibraryInfo>
#include <QTranslator>

#include <memory>
#include <vector>

/// Outside of the namespace, as Qt asks.
static void bringCatalogues() {
    Q_INIT_RESOURCE(translations);
}

namespace wording {

namespace {

const QString english = QStringLiteral("en");

/// Ours has one context for all classes: a word has one translation, whoever says it.
class Catalogue : public QTranslator {
public:
    [[nodiscard]] QString translate(const char* /*context*/, const char* source,
                                    const char* disambiguation, int n) const override {
        return QTranslator::translate("wording", source, disambiguation, n);
    }
};

/// All that hangs on the language that was chosen.
struct Chosen {
    QString code = english;
    QLocale locale{QLocale::English, QLocale::UnitedStates}; // "Sep", where British says "Sept".
    std::vector<std::unique_ptr<QTranslator>> catalogues;
    CoreSentences core;
};

Chosen& chosen() {
    static Chosen one;
    return one;
}

QString codeOf(const QString& language) {
    return language.section(QLatin1Char('-'), 0, 0).section(QLatin1Char('_'), 0, 0);
}

void load(Chosen& now, std::unique_ptr<QTranslator> catalogue, const QString& name,
          const QString& folder) {
    if (catalogue->load(name, folder) && QCoreApplication::instance() != nullptr) {
        QCoreApplication::installTranslator(catalogue.get());
        now.catalogues.push_back(std::move(catalogue));
    }
}

} // namespace

QStringList Tongue::shipped() {
    bringCatalogues();
    QStringList codes{english};
    for (const QString& file :
         QDir(QStringLiteral(":/translations"))
             .entryList({QStringLiteral("meremark_*.qm")}, QDir::Files, QDir::Name)) {
        codes += file.section(QLatin1Char('_'), 1).section(QLatin1Char('.'), 0, 0);
    }
    return codes;
}

QString Tongue::ownName(const QString& code) {
    const QString name =
        code == english ? QStringLiteral("English") : QLocale(code).nativeLanguageName();
    return name.left(1).toUpper() + name.mid(1);
}

QString Tongue::best(const QString& wanted, const QStringList& system) {
    const QStringList known = shipped();
    for (const QString& language : QStringList(wanted) + system) {
        if (known.contains(codeOf(language))) {
            return codeOf(language);
        }
    }
    return english;
}

void Tongue::speak(const QString& code) {
    Chosen next;
    if (code != english && shipped().contains(code)) {
        const QString folder = QStringLiteral(":/translations");
        next.code = code;
        next.locale = QLocale(code);
        next.core = CoreSentences::read(QStringLiteral("%1/core_%2.ts").arg(folder, code));
        // Qt's own words first: what is installed later is asked first.
        load(next, std::make_unique<QTranslator>(), QStringLiteral("qtbase_") + code,
             QLibraryInfo::path(QLibraryInfo::TranslationsPath));
        load(next, std::make_unique<Catalogue>(), QStringLiteral("meremark_") + code, folder);
    }
    chosen() = std::move(next);
    // What is typed and shown by fields follows the language too, and not the machine. That of C
    // begins the week on Monday; it would leave out the marks between thousands.
    QLocale plain = QLocale::c();
    plain.setNumberOptions(QLocale::DefaultNumberOptions);
    QLocale::setDefault(chosen().code == english ? plain : chosen().locale);
}

QString Tongue::spoken() {
    return chosen().code;
}

const QLocale& Tongue::locale() {
    return chosen().locale;
}

QString Tongue::number(double value, int decimals) {
    QString text = QString::fromStdString(base::fixedText(value, decimals));
    return text.replace(QLatin1Char('.'), locale().decimalPoint());
}

QString Tongue::shortNumber(double value, int most) {
    const QString mark = locale().decimalPoint();
    QString text = number(value, most);
    while (text.contains(mark) && (text.endsWith('0') || text.endsWith(mark))) {
        const bool wasMark = text.endsWith(mark);
        text.chop(1);
        if (wasMark) {
            break;
        }
    }
    return text;
}

QString Tongue::whole(qint64 value) {
    return locale().toString(value);
}

QString Tongue::countedWhole(const char* many, const char* one, qint64 n) {
    QString form;
    if (!chosen().catalogues.empty()) {
        // Of the catalogue itself, because tr() would set the number without marks of thousands.
        constexpr qint64 most = 1'000'000'000; // Forms hang on the last digits, which stay.
        form =
            chosen().catalogues.back()->translate("wording", many, one, static_cast<int>(n % most));
    }
    if (form.isEmpty()) {
        form = QString::fromUtf8(n == 1 ? one : many);
    }
    return form.replace(QLatin1String("%n"), whole(n));
}

QString Tongue::ofCore(const std::string& said) {
    return chosen().core.translated(QString::fromStdString(said));
}

QString Tongue::sentence(const base::Error& error) {
    if (chosen().code == english) {
        return QString::fromStdString(error.sentence());
    }
    return QString::fromStdString(base::Error{error.kind, ofCore(error.what).toStdString(),
                                              ofCore(error.where).toStdString(),
                                              ofCore(error.whatToDo).toStdString()}
                                      .sentence());
}

} // namespace wording

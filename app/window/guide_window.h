// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>
#include <QTextBrowser>

class QLabel;
class QLineEdit;
class QListWidget;
class QPrinter;

namespace window {

/// A chapter of the guide as it is read. Nothing but chapters can be opened in it: it neither reads
/// another file nor asks any server.
class GuidePage : public QTextBrowser {
    Q_OBJECT
public:
    explicit GuidePage(QWidget* parent = nullptr);
    /// The chapter that is shown; empty at first.
    [[nodiscard]] QString chapter() const;
    /// \param heading as it is written in the chapter; empty for its beginning.
    void showChapter(const QString& chapter, const QString& heading = {});

signals:
    /// A link led out of the guide; it was not followed.
    void addressMet(const QString& address);

protected:
    void doSetSource(const QUrl& url, QTextDocument::ResourceType type) override;
    QVariant loadResource(int type, const QUrl& url) override;
    void changeEvent(QEvent* event) override;

private:
    /// Makes headings what links can lead to, and lets links have the colour of the theme.
    void dress();
};

/// The user's guide in a window of its own, to be read beside the desk.
class GuideWindow : public QDialog {
    Q_OBJECT
public:
    explicit GuideWindow(QWidget* parent = nullptr);
    ~GuideWindow() override; ///< Keeps where and how large it was.

    /// Comes up with this chapter at this heading.
    void openAt(const QString& chapter, const QString& heading = {});

private:
    void layOut();
    void wire();
    void takeChapter(const QString& chapter);
    /// The next place where what is in the field stands: in this chapter, then in those after it.
    void findNext();
    void preview();

    GuidePage* page_;
    QListWidget* chapters_;
    QLineEdit* wanted_;
    QLabel* said_;
};

/// Writes a chapter on paper: black, whatever the theme.
void printChapter(const QTextDocument& chapter, QPrinter& printer);

} // namespace window

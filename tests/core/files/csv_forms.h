#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace pumpwright {

/// One way in which programs write a table.
struct CsvForm {
    char separator;
    char decimal;
    enum class Bytes { Lf, CrLf, Marked, Utf16Little, Utf16Big } bytes;

    std::string lineEnd() const { return bytes == Bytes::CrLf ? "\r\n" : "\n"; }

    /// A sample with stand-ins: | separator between cells, ^ separator within one, ~ decimal sign, / end of a
    /// line, $ the same within a cell, ' quotation mark.
    std::string text(std::string_view sample) const {
        std::string result;
        for (const char c : sample) {
            switch (c) {
            case '|':
            case '^':
                result += separator;
                break;
            case '~':
                result += decimal;
                break;
            case '/':
            case '$':
                result += lineEnd();
                break;
            case '\'':
                result += '"';
                break;
            default:
                result += c;
            }
        }
        return result;
    }

    /// The bytes of a file with this text, which holds ASCII alone.
    std::string file(std::string_view text) const {
        if (bytes == Bytes::Lf || bytes == Bytes::CrLf) {
            return std::string(text);
        }
        if (bytes == Bytes::Marked) {
            return "\xEF\xBB\xBF" + std::string(text);
        }
        const bool little = bytes == Bytes::Utf16Little;
        std::string wide = little ? "\xFF\xFE" : "\xFE\xFF";
        for (const char c : text) {
            wide += little ? c : '\0';
            wide += little ? '\0' : c;
        }
        return wide;
    }
};

inline std::vector<CsvForm> csvForms() {
    std::vector<CsvForm> forms;
    for (const char separator : {',', ';', '\t'}) {
        for (const char decimal : {'.', ','}) {
            for (int bytes = 0; bytes < 5; ++bytes) {
                forms.push_back({separator, decimal, static_cast<CsvForm::Bytes>(bytes)});
            }
        }
    }
    return forms;
}

} // namespace pumpwright

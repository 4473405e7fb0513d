/* A Java that writes down how it was called, makes the archive that it is asked for, and ends as it is told. */
#include <stdio.h>
#include <stdlib.h>
#include <wchar.h>
#include <windows.h>

static void make(const wchar_t *argument, const wchar_t *option) {
    if (wcsncmp(argument, option, wcslen(option)) == 0 && _wgetenv(L"STAND_IN_ARCHIVES")) {
        fclose(_wfopen(argument + wcslen(option), L"w"));
        SetFileAttributesW(argument + wcslen(option), FILE_ATTRIBUTE_READONLY);
    }
}

int wmain(int count, wchar_t **arguments) {
    FILE *calls = _wfopen(_wgetenv(L"STAND_IN_CALLS"), L"ab");
    for (int at = 1; at < count; at++) {
        char text[4096];
        WideCharToMultiByte(CP_UTF8, 0, arguments[at], -1, text, sizeof text, NULL, NULL);
        fprintf(calls, "<%s>\n", text);
        make(arguments[at], L"-XX:ArchiveClassesAtExit=");
        make(arguments[at], L"-XX:AOTCacheOutput=");
    }
    fclose(calls);
    if (count == 2 && wcscmp(arguments[1], L"-version") == 0) {
        fprintf(stderr, "openjdk version \"%ls\" 2021-10-19\n", _wgetenv(L"STAND_IN_VERSION"));
    }
    return _wtoi(_wgetenv(L"STAND_IN_STATUS"));
}

@echo off
rem Starts Quoin with the Java of JAVA_HOME, or the one on the path (17 or later).
rem QUOIN_JAVA_OPTS adds options for that Java, such as -Xmx4g for a very large order.
setlocal
set "lib=%~dp0..\lib"
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"
where /q "%java%" 2>nul || if not exist "%java%.exe" (
    echo quoin: there is no Java here; install a Java runtime 17 or later, or set JAVA_HOME 1>&2
    exit /b 3
)
"%java%" -XX:SharedArchiveFile="%lib%\quoin.jsa" -Xshare:auto -Xlog:disable ^
    -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xms24m -Djava.awt.headless=true ^
    %QUOIN_JAVA_OPTS% -jar "%lib%\quoin.jar" %*
exit /b %ERRORLEVEL%

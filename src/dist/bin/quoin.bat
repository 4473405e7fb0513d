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
rem For a quick start, an archive of Quoin's classes as this Java has loaded them, made at the first start and again wherever
rem the folder or the Java is another. Where it cannot be written, or does not fit, Quoin starts without it.
set "made_for="
if exist "%lib%\classes.jsa" if exist "%lib%\classes.jsa.for" set /p made_for=<"%lib%\classes.jsa.for"
if not "%made_for%"=="%java% %lib%" (
    "%java%" -XX:ArchiveClassesAtExit="%lib%\new.jsa" -Xlog:disable -XX:+UseSerialGC -Djava.awt.headless=true ^
        -cp "%lib%\quoin.jar" dev.quoin.cli.FirstStart "%lib%\first-start" "%lib%\first-run" >nul 2>&1
    if exist "%lib%\new.jsa" move /y "%lib%\new.jsa" "%lib%\classes.jsa" >nul 2>&1
    >"%lib%\classes.jsa.for" echo %java% %lib%
    rmdir /s /q "%lib%\first-run" 2>nul
)
"%java%" -XX:+IgnoreUnrecognizedVMOptions -XX:SharedArchiveFile="%lib%\classes.jsa" -Xshare:auto -Xlog:disable -XX:-UsePerfData ^
    -XX:TieredStopAtLevel=1 -XX:CICompilerCount=1 -XX:C1MaxInlineLevel=4 -XX:C1MaxInlineSize=20 ^
    -XX:Tier3InvocationThreshold=150 -XX:Tier3MinInvocationThreshold=50 -XX:Tier3CompileThreshold=1000 ^
    -XX:Tier3BackEdgeThreshold=10000 -XX:+UseSerialGC -Xms24m ^
    -Djava.awt.headless=true -Dsun.font.layout.ffm=false -Dorg.freemarker.loggerLibrary=none ^
    %QUOIN_JAVA_OPTS% -jar "%lib%\quoin.jar" %*
exit /b %ERRORLEVEL%
